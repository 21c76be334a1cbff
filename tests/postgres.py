"""A PostgreSQL server of the tests' own, and commands run as a user without rights."""
