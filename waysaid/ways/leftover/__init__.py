"""Ways to divide where something is left over, a module a way.

Each is told twice: as groups and what is left (16 / 3 is 5, 1 left over), and with the exact value
said in the end (5 1/3).
"""
