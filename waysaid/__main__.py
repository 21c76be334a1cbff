"""`python -m waysaid` is the command `waysaid`."""

import sys

from waysaid.cli import main

sys.exit(main())
