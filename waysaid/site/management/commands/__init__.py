"""Commands of the site, a module each."""
