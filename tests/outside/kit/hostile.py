"""Signed parts that outside libraries may let through and ours must refuse.

Each is rightly signed by the key that it names, unless its name says otherwise: only its form is
wrong. Beside each stands the rule that it breaks and the code of the refusal.
"""

import hashlib
import hmac
import json
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from .jose import Key, b64, compact_json, unb64

# The order of the base point, RFC 8032 §5.1.
L = 2**252 + 27742317777372353535851937790883648493
ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_"
TYPES = ("sendaluna-signers", "sendaluna-precautions", "sendaluna-plan")


@dataclass(frozen=True)
class Case:
    """A hostile part: what it is, which rule it breaks, ours' refusal, and what stands in the file."""

    name: str
    source: str
    refusal: str
    part: str | dict[str, Any]

    @property
    def text(self) -> str:
        """The part as an outside library takes it."""
        return self.part if isinstance(self.part, str) else compact_json(self.part)


def hostile(typ: str, key: Key, payload: bytes, other: Key) -> list[Case]:
    """Every hostile form of one good part; `other` is a key that the clinic never named."""
    good = compact_json(key.header(typ))
    return [
        *serialisations(good, payload, key),
        *headers(typ, payload, key, other),
        *encodings(good, payload, key),
        *payloads(good, payload, key),
    ]


def serialisations(good: str, payload: bytes, key: Key) -> Iterator[Case]:
    """RFC 7515 §7.2: the JSON serialisations, as text where the compact one stands, and as JSON."""
    protected, body, signature = key.sign(good, payload).split(".")
    one = {"protected": protected, "signature": signature}
    with_header = {"payload": body, **one, "header": {"note": "not signed"}}
    for name, value in (
        ("flattened JSON serialisation", {"payload": body, **one}),
        ("flattened, with an unprotected header", with_header),
        ("general JSON serialisation", {"payload": body, "signatures": [one]}),
    ):
        yield Case(name, "RFC 7515 §7.2", "file-altered", value)
        yield Case(f"{name}, as text", "RFC 7515 §7.2", "file-altered", compact_json(value))
    compact = f"{protected}.{body}.{signature}"
    yield Case("a fourth segment", "RFC 7515 §7.1", "file-altered", f"{compact}.")
    yield Case("detached payload", "RFC 7515 appendix F", "file-altered", f"{protected}..{signature}")
    yield Case("a line break after it", "RFC 7515 §7.1", "file-altered", f"{compact}\n")
    yield Case("a space within it", "RFC 7515 §2", "file-altered", f"{compact[:-8]} {compact[-8:]}")


def headers(typ: str, payload: bytes, key: Key, other: Key) -> Iterator[Case]:
    """Headers with more, less or other than `alg`, `kid` and `typ`."""
    good = key.header(typ)

    def case(name: str, source: str, refusal: str, header: dict[str, Any] | str, by: Key = key) -> Case:
        text = header if isinstance(header, str) else compact_json(header)
        return Case(name, source, refusal, by.sign(text, payload))

    yield case("crit, empty", "RFC 7515 §4.1.11", "part-critical", {**good, "crit": []})
    b64_true = {**good, "b64": True, "crit": ["b64"]}
    yield case("crit with b64, true", "RFC 7797 §6", "part-critical", b64_true)
    b64_false = {**good, "b64": False, "crit": ["b64"]}
    yield case("crit with b64, false", "RFC 7797 §6", "part-critical", b64_false)
    yield case("crit with exp", "RFC 7515 §4.1.11", "part-critical", {**good, "exp": 9, "crit": ["exp"]})
    for member, value, source in (
        ("jwk", key.public, "RFC 7515 §4.1.3"),
        ("jku", "https://example.org/keys.json", "RFC 7515 §4.1.2"),
        ("x5c", ["MIIB"], "RFC 7515 §4.1.6"),
        ("x5u", "https://example.org/key.pem", "RFC 7515 §4.1.5"),
        ("cty", "json", "RFC 7515 §4.1.10"),
        ("b64", True, "RFC 7797 §3"),
        ("b64", False, "RFC 7797 §6"),
        ("note", "hello", "RFC 7515 §4.3"),
    ):
        name = f"{member}: {compact_json(value)}" if isinstance(value, bool) else member
        yield case(name, source, "part-header", {**good, member: value})

    text = compact_json(good)
    for name, twice in (
        ("alg twice", text.replace('{"alg"', '{"alg":"Ed25519","alg"')),
        ("alg twice, another first", text.replace('{"alg"', '{"alg":"none","alg"')),
        ("kid twice", text.replace('"kid"', f'"kid":"{other.kid}","kid"')),
        ("typ twice, one escaped", text.replace('"typ"', f'"\\u0074yp":"{typ}","typ"')),
    ):
        yield case(name, "RFC 7515 §4, §10.12", "part-duplicate-member", twice)

    without_typ = {name: value for name, value in good.items() if name != "typ"}
    for wrong in (*(t for t in TYPES if t != typ), "JWT", typ.upper(), f"application/{typ}", "", None):
        yield case(f"typ: {wrong}", "RFC 8725 §3.11", "part-type", {**good, "typ": wrong})
    yield case("typ missing", "RFC 8725 §3.11", "part-type", without_typ)

    yield case("alg: EdDSA", "RFC 9864 §2.2", "part-algorithm", {**good, "alg": "EdDSA"})
    yield case("alg: ed25519", "RFC 9864 §2.2", "part-algorithm", {**good, "alg": "ed25519"})
    without_alg = {name: value for name, value in good.items() if name != "alg"}
    yield case("alg missing", "RFC 7515 §4.1.1", "part-algorithm", without_alg)
    unsigned = f"{b64(compact_json({**good, 'alg': 'none'}).encode())}.{b64(payload)}."
    yield Case("alg: none, not signed", "RFC 8725 §2.1", "part-algorithm", unsigned)
    hashed = f"{b64(compact_json({**good, 'alg': 'HS256'}).encode())}.{b64(payload)}"
    mac = hmac.digest(unb64(key.x), hashed.encode(), hashlib.sha256)
    yield Case("alg: HS256 with the public key", "RFC 8725 §2.1", "part-algorithm", f"{hashed}.{b64(mac)}")

    kid = key.kid
    stray = kid[:-1] + ALPHABET[ALPHABET.index(kid[-1]) | 1]
    for name, wrong in (
        ("kid: first half only", kid[:22]),
        ("kid: one character short", kid[:-1]),
        ("kid: with padding", f"{kid}="),
        ("kid: with a stray trailing bit", stray),
        ("kid: the public key itself in hex", unb64(key.x).hex()),
        ("kid: a name", "surgeon"),
        ("kid: another key's", other.kid),
    ):
        yield case(name, "RFC 7638 §3", "signer-unknown", {**good, "kid": wrong})
    without_kid = {name: value for name, value in good.items() if name != "kid"}
    yield case("kid missing", "RFC 7515 §4.1.4", "signer-unknown", without_kid)
    yield case("by a key on no list", "RFC 7515 §6", "signer-unknown", other.header(typ), other)
    yield case("by another key under this kid", "RFC 7515 §5.2", "file-altered", good, other)

    reordered = {name: good[name] for name in ("typ", "kid", "alg")}
    yield case("header in another order", "ours: exact bytes", "file-altered", reordered)
    spaced = json.dumps(good)
    yield case("header with spaces", "ours: exact bytes", "file-altered", spaced)
    escaped = text.replace("Ed25519", "\\u0045d25519")
    yield case("header with an escape", "ours: exact bytes", "file-altered", escaped)


def encodings(good: str, payload: bytes, key: Key) -> Iterator[Case]:
    """RFC 7515 §2 and RFC 4648 §3.5: base64url without padding, and no bit beside the data."""
    protected, body = b64(good.encode()), b64(payload)
    signing_input = f"{protected}.{body}"
    signature = key.sign_text(signing_input).rsplit(".", 1)[1]

    def padded(text: str) -> str:
        return text + ("=" * (-len(text) % 4) or "====")

    source = "RFC 7515 §2"
    yield Case("padding: header", source, "file-altered", key.sign_text(f"{padded(protected)}.{body}"))
    yield Case("padding: payload", source, "file-altered", key.sign_text(f"{protected}.{padded(body)}"))
    yield Case("padding: signature", source, "file-altered", f"{signing_input}.{padded(signature)}")
    source = "RFC 4648 §3.5"
    yield Case("stray bits: signature", source, "file-altered", f"{signing_input}.{stray_bits(signature)}")
    if len(protected) % 4:
        text = key.sign_text(f"{stray_bits(protected)}.{body}")
        yield Case("stray bits: header", source, "file-altered", text)
    if len(body) % 4:
        text = key.sign_text(f"{protected}.{stray_bits(body)}")
        yield Case("stray bits: payload", source, "file-altered", text)
    raw = unb64(signature)
    s_and_l = (int.from_bytes(raw[32:], "little") + L).to_bytes(32, "little")
    malleable = f"{signing_input}.{b64(raw[:32] + s_and_l)}"
    yield Case("signature with S + L", "RFC 8032 §5.1.7, §8.4", "file-altered", malleable)
    long = f"{signing_input}.{b64(raw + bytes(1))}"
    yield Case("signature of 65 bytes", "RFC 8032 §5.1.6", "file-altered", long)
    flipped = f"{signing_input}.{b64(bytes([raw[0] ^ 1]) + raw[1:])}"
    yield Case("signature with one bit changed", "RFC 8032 §5.1.7", "file-altered", flipped)


def stray_bits(text: str) -> str:
    """The same bytes for a careless decoder: the lowest, unused bit of the last character is set."""
    return text[:-1] + ALPHABET[ALPHABET.index(text[-1]) | 1]


def payloads(good: str, payload: bytes, key: Key) -> Iterator[Case]:
    """The same content in other bytes, and content that no reader of ours knows."""
    doc = json.loads(payload)
    text = payload.decode()
    nested: list[Any] = []
    for _ in range(16):
        nested = [nested]
    issued = doc.get("issued_at") or doc["head"]["issued_at"]
    altered = {
        "a space after a colon": text.replace('"format":1', '"format": 1'),
        "a space before it": f" {text}",
        "a line break after it": f"{text}\n",
        "a byte order mark": f"\ufeff{text}",
        "indented": json.dumps(doc, indent=1, ensure_ascii=False),
        "members in reverse order": compact_json(dict(reversed(doc.items()))),
        "members sorted": json.dumps(doc, separators=(",", ":"), sort_keys=True, ensure_ascii=False),
        "an ASCII letter escaped": text.replace('"format"', '"\\u0066ormat"'),
        "1.0 for 1": text.replace('"format":1', '"format":1.0'),
        "1e0 for 1": text.replace('"format":1', '"format":1e0'),
        "the zone as +00:00 for Z": text.replace(issued, issued.replace("Z", "+00:00")),
        "a fraction of zero seconds": text.replace(issued, issued.replace("Z", ".000Z")),
        "an integer beyond 2^53 - 1": text.replace('"format":1', '"format":1,"x":9007199254740992'),
        "format 0": text.replace('"format":1', '"format":0'),
        "format as text": text.replace('"format":1', '"format":"1"'),
        "no format": text.replace('"format":1,', ""),
        "not JSON": text[:-1],
        "an array": f"[{text}]",
        "nothing": "",
    }
    for name, changed in altered.items():
        yield Case(f"payload: {name}", "ours: exact bytes", "file-altered", key.sign(good, changed.encode()))
    if not text.isascii():
        escaped = json.dumps(doc, separators=(",", ":")).encode()
        yield Case("payload: accents escaped", "ours: exact bytes", "file-altered", key.sign(good, escaped))
    for name, source, refusal, changed in (
        ("a member twice", "RFC 8259 §4", "part-duplicate-member", text.replace("{", '{"format":1,', 1)),
        (
            "a member twice, one escaped",
            "RFC 8259 §4",
            "part-duplicate-member",
            text.replace("{", '{"\\u0066ormat":1,', 1),
        ),
        (
            "a member of a member twice",
            "RFC 8259 §4",
            "part-duplicate-member",
            text.replace('"en":', '"en":"x","en":', 1),
        ),
        ("an unknown member", "ours: closed format", "format-newer", compact_json({**doc, "more": 1})),
        ("format 2", "ours: closed format", "format-newer", compact_json({**doc, "format": 2})),
        ("nested 17 deep", "RFC 8259 §9", "file-too-deep", compact_json({**doc, "more": nested})),
    ):
        yield Case(f"payload: {name}", source, refusal, key.sign(good, changed.encode()))
