"""What the outside checks share: counting, running the two programs, and keys that Python knows."""
