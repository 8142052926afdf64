"""Letter codes, computed again from their description.

Outside: Argon2id of PyPI argon2-cffi (the reference C code of RFC 9106's authors), itself held
against RFC 9106 §5.3; Crockford's base32; thumbprints (RFC 7638) by PyPI jwcrypto. The description
is the one in `src-tauri/exchange/src/letter.rs`: 55 bits of Argon2id over the clinic key's
thumbprint in eleven characters, and a check character in GF(32). Only the description is shared:
the check is computed here by polynomials, not by the same steps.
"""

import os
import tempfile
from pathlib import Path

import argon2.low_level as argon2

from kit.jose import Key, b64, thumbprint
from kit.programs import Answer, clinic
from kit.tally import Tally

# Crockford's base32: without I, L, O and U.
ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
SALT = b"sendaluna-letter-1"
KEYS = 20


def argon2id(secret: bytes) -> bytes:
    """Argon2id (RFC 9106), 64 MiB, three passes, one lane, 32 bytes."""
    return argon2.hash_secret_raw(
        secret, SALT, time_cost=3, memory_cost=64 * 1024, parallelism=1, hash_len=32, type=argon2.Type.ID
    )


def times(a: int, b: int) -> int:
    """The product in GF(32) = GF(2)[x] / (x^5 + x^2 + 1)."""
    product = 0
    for i in range(5):
        if b >> i & 1:
            product ^= a << i
    for i in range(8, 4, -1):
        if product >> i & 1:
            product ^= 0b100101 << (i - 5)
    return product


def check_symbol(symbols: list[int]) -> int:
    """The sum of the symbols, the last weighing x, the one before x^2, and so on."""
    weight, total = 1, 0
    for symbol in reversed(symbols):
        weight = times(weight, 2)
        total ^= times(weight, symbol)
    return total


def letter_code(x: str) -> str:
    """The code of a public key."""
    kid = thumbprint({"kty": "OKP", "crv": "Ed25519", "x": x})
    bits = "".join(f"{byte:08b}" for byte in argon2id(kid.encode()))
    symbols = [int(bits[i : i + 5], 2) for i in range(0, 55, 5)]
    code = "".join(ALPHABET[symbol] for symbol in [*symbols, check_symbol(symbols)])
    return "-".join((code[:4], code[4:8], code[8:]))


def ask(x: str, folder: Path) -> Answer:
    """What our program answers when asked for the code of a public key."""
    file = folder / "key.pub"
    file.write_text(f"{x}\n", encoding="utf-8")
    return clinic("letter-code", "--public", file, "--json")


def rfc_9106_tag() -> bytes:
    """Argon2id of RFC 9106 §5.3, which has a secret and associated data too."""
    ffi = argon2.ffi
    out = ffi.new("uint8_t[]", 32)
    lengths = ((1, 32), (2, 16), (3, 8), (4, 12))
    inputs = [ffi.new("uint8_t[]", bytes([byte]) * length) for byte, length in lengths]
    password, salt, secret, data = inputs
    context = ffi.new(
        "argon2_context *",
        {
            "out": out,
            "outlen": 32,
            "pwd": password,
            "pwdlen": 32,
            "salt": salt,
            "saltlen": 16,
            "secret": secret,
            "secretlen": 8,
            "ad": data,
            "adlen": 12,
            "t_cost": 3,
            "m_cost": 32,
            "lanes": 4,
            "threads": 4,
            "version": 0x13,
            "allocate_cbk": ffi.NULL,
            "free_cbk": ffi.NULL,
            "flags": 0,
        },
    )
    if argon2.core(context, argon2.Type.ID.value) != 0:
        return b""
    return bytes(ffi.buffer(out, 32))


def main() -> None:
    tally = Tally()
    # RFC 9106 §5.3, the tag.
    tag = "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659"
    tally.same("RFC 9106 §5.3", rfc_9106_tag().hex(), tag)
    with tempfile.TemporaryDirectory() as temp:
        folder = Path(temp)
        # RFC 8037 A.2.
        published = "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo"
        keys = [published] + [Key(os.urandom(32)).x for _ in range(KEYS)]
        for x in keys:
            tally.same(f"letter code of {x}", ask(x, folder).json.get("letter_code"), letter_code(x))
        # Keys of small order (y = 1, order 1; y = -1, order 2), for which RFC 8032 §5.1.7 verifies
        # signatures that nobody made. The clinic's program takes neither for a key.
        for weak in (b"\x01" + bytes(31), b"\xec" + b"\xff" * 30 + b"\x7f"):
            answer = ask(b64(weak), folder)
            tally.same(f"no letter code of {b64(weak)}", (answer.exit_code, answer.error), (3, "key-file"))
    tally.finish()


if __name__ == "__main__":
    main()
