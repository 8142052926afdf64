"""A picture of what stands on the screen, taken from the screen itself."""

import struct
import time
import zlib
from pathlib import Path

from Xlib import X
from Xlib.display import Display


# A page is drawn when nothing has changed for so long; what moves all the time is taken as it is.
STILL_S = 0.08
LOOKS = 12


def take(file: Path, width: int, height: int) -> None:
    """Saves the upper left corner of the screen, as soon as it is still."""
    screen = Display()
    try:
        look = lambda: screen.screen().root.get_image(0, 0, width, height, X.ZPixmap, 0xFFFFFFFF).data  # noqa: E731
        rows = look()
        for _ in range(LOOKS):
            time.sleep(STILL_S)
            before, rows = rows, look()
            if before == rows:
                break
    finally:
        screen.close()
    save(file, rows, width, height)


def save(file: Path, rows: bytes, width: int, height: int) -> None:
    """Writes a picture as a PNG file."""
    # Blue, green, red and nothing for each point, as this kind of screen keeps them.
    points = bytearray(3 * width * height)
    for to, of in enumerate((2, 1, 0)):
        points[to::3] = rows[of::4]
    line = 3 * width
    lines = b"".join(b"\0" + points[at : at + line] for at in range(0, len(points), line))
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    parts = ((b"IHDR", head), (b"IDAT", zlib.compress(lines, 6)), (b"IEND", b""))
    file.write_bytes(b"\x89PNG\r\n\x1a\n" + b"".join(chunk(name, data) for name, data in parts))


def chunk(name: bytes, data: bytes) -> bytes:
    """One part of a PNG file."""
    return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))
