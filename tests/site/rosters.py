"""A school's file as the tests make it: invented people, a table a part."""

import csv
import io
import zipfile

CLASSES = (
    {"sourcedId": "k1", "status": "active", "title": "2B", "classCode": "B-2"},
    {"sourcedId": "k2", "status": "active", "title": "3A", "classCode": ""},
    {"sourcedId": "k3", "status": "tobedeleted", "title": "Gone", "classCode": ""},
    {"sourcedId": "k4", "status": "active", "title": "Empty", "classCode": ""},
)
PEOPLE = (
    ("u1", "Aroha", "Tane", "", "true", "student"),
    ("u2", "José", "Paz", "Pepe", "true", "student"),
    ("u3", "Wren", "Adler", "", "true", "student"),
    ("u4", "Wren", "Brook", "", "true", "student"),
    ("u5", "Off", "Switched", "", "false", "student"),
    ("u6", "Teacher", "Tall", "", "true", "teacher"),
    ("u7", "Ravi", "Sen", "", "true", "student"),
)
ENROLLED = (
    ("k1", "u1", "student"),
    ("k1", "u2", "student"),
    ("k1", "u3", "student"),
    ("k1", "u4", "student"),
    ("k1", "u5", "student"),
    ("k1", "u6", "teacher"),
    ("k1", "u1", "student"),
    ("k1", "nobody", "student"),
    ("k2", "u7", "student"),
    ("k3", "u7", "student"),
)
PRIVATE = ("1999-09-09", "mail@example.org", "055-1234", "s3cret")
"""What stands in the columns that nobody asked for."""


def people(version):
    """The table of users: of 1.1 with a role, of 1.2 with the name a child goes by."""
    rows = []
    for key, given, family, preferred, on, role in PEOPLE:
        row = {"sourcedId": key, "status": "active", "dateLastModified": PRIVATE[0]}
        row |= {"enabledUser": on, "username": f"x-{key}", "givenName": given}
        row |= {"familyName": family, "email": PRIVATE[1], "phone": PRIVATE[2]}
        row |= {"password": PRIVATE[3]}
        row |= {"role": role} if version == "1.1" else {"preferredGivenName": preferred}
        rows.append(row)
    return rows


def enrolled():
    """The table of enrollments."""
    return [
        {
            "sourcedId": f"e{at}",
            "status": "active",
            "classSourcedId": k,
            "userSourcedId": u,
            "role": r,
        }
        for at, (k, u, r) in enumerate(ENROLLED)
    ]


def table(rows):
    """A table as CSV with the mark that many programs write."""
    written = io.StringIO(newline="")
    made = csv.DictWriter(written, list(rows[0]))
    made.writeheader()
    made.writerows(rows)
    return written.getvalue().encode("utf-8-sig")


def school_file(version="1.2", folder="", **changed):
    """The zip; a table given as None is left out, as bytes it stands as it is."""
    tables = {
        "manifest": b"propertyName,value\r\noneroster.version,%s\r\n" % version.encode(),
        "classes": table(CLASSES),
        "enrollments": table(enrolled()),
        "users": table(people(version)),
        **changed,
    }
    written = io.BytesIO()
    with zipfile.ZipFile(written, "w", zipfile.ZIP_DEFLATED) as parts:
        for name, content in tables.items():
            if content is not None:
                parts.writestr(undated(f"{folder}{name}.csv"), content, zipfile.ZIP_DEFLATED)
    return written.getvalue()


def undated(name):
    """A part of a zip that holds no time of writing: the same in every run."""
    return zipfile.ZipInfo(name)
