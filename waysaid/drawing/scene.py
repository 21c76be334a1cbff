"""A scene: one finished drawing, and the same as JSON for the front end."""

from dataclasses import dataclass, fields

from waysaid.drawing.shape import Shape

Json = str | int | bool | list["Json"] | dict[str, "Json"]


@dataclass(frozen=True, slots=True)
class Scene:
    """A drawing in units (10 units are 1 % of the screen's height), with what it shows in words.

    Nothing in `shapes` reaches past `width` and `height`.
    """

    width: int
    height: int
    title: str
    desc: str
    shapes: tuple[Shape, ...] = ()


def scene_json(scene: Scene) -> dict[str, Json]:
    """Return the scene as plain JSON; each shape has `t`, its kind, and its fields."""
    return {
        "width": scene.width,
        "height": scene.height,
        "title": scene.title,
        "desc": scene.desc,
        "shapes": [_shape_json(shape) for shape in scene.shapes],
    }


def _shape_json(shape: Shape) -> Json:
    made: dict[str, Json] = {"t": type(shape).__name__.lower()}
    for field in fields(shape):
        value = getattr(shape, field.name)
        made[field.name] = str(value) if isinstance(value, str) else value
    return made
