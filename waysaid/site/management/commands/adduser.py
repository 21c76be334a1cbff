"""Add a teacher's account to a school's server."""

import getpass
from argparse import ArgumentParser
from typing import Any

from django.core.management.base import BaseCommand, CommandError

from waysaid.site.accounts import BadAccountError, add_user


class Command(BaseCommand):
    """Ask for a password twice, or take it from standard input, and make the account."""

    help = "Add a teacher's account."

    def add_arguments(self, parser: ArgumentParser) -> None:
        """Take the name to sign in with."""
        parser.add_argument("name")
        parser.add_argument("--password-stdin", action="store_true")

    def handle(self, *args: Any, **options: Any) -> None:
        """Make the account. Raises `CommandError` with one sentence."""
        if options["password_stdin"]:
            password = input()
        else:
            password = getpass.getpass("Password: ")
            if getpass.getpass("Again: ") != password:
                raise CommandError("The two passwords differ.")
        try:
            add_user(options["name"], password)
        except BadAccountError as error:
            raise CommandError(str(error)) from None
        self.stdout.write(f"{options['name']} can sign in now.")
