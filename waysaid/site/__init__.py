"""The web application: the only place that knows HTTP, sessions or a database."""
