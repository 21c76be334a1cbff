"""What the site answers, a module a page or action."""
