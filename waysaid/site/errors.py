"""Why the app does not start, each as one plain sentence for whoever started it."""


class CannotStartError(RuntimeError):
    """Raised with what stands in the way of starting, and what would help."""


class NotReadyError(RuntimeError):
    """Raised with why the data cannot be opened."""
