"""JSON Web Signatures as two outside libraries see them, and as bytes written by hand.

RFC 7515 (JWS), RFC 8037 and RFC 9864 (Ed25519 in JOSE), RFC 7638 (thumbprints).
"""

import base64
import hashlib
import json
import warnings
from functools import cached_property
from typing import Any

import joserfc.jws
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat
from joserfc.jwk import OKPKey
from jwcrypto.jwk import JWK
from jwcrypto.jws import JWS

# RFC 9864 replaces RFC 8037's `EdDSA`.
ALGORITHM = "Ed25519"


def b64(data: bytes) -> str:
    """Unpadded base64url (RFC 7515 §2)."""
    return base64.urlsafe_b64encode(data).rstrip(b"=").decode()


def unb64(text: str) -> bytes:
    """Reads unpadded base64url."""
    return base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))


def sha256(text: str) -> str:
    """SHA-256 of a text, in base64url."""
    return b64(hashlib.sha256(text.encode()).digest())


def compact_json(value: Any) -> str:
    """JSON without white space, in the order given."""
    return json.dumps(value, separators=(",", ":"), ensure_ascii=False)


class Key:
    """An Ed25519 key whose seed Python knows."""

    def __init__(self, seed: bytes) -> None:
        self.private = Ed25519PrivateKey.from_private_bytes(seed)
        self.x = b64(self.private.public_key().public_bytes(Encoding.Raw, PublicFormat.Raw))
        self.public = {"kty": "OKP", "crv": "Ed25519", "x": self.x}
        self.secret = {**self.public, "d": b64(seed)}

    @cached_property
    def kid(self) -> str:
        """The RFC 7638 thumbprint, as jwcrypto computes it."""
        return thumbprint(self.public)

    def header(self, typ: str) -> dict[str, str]:
        """The protected header that ours writes, in its order."""
        return {"alg": ALGORITHM, "kid": self.kid, "typ": typ}

    def sign_text(self, signing_input: str) -> str:
        """A compact JWS from a signing input written by hand, signed by the primitive alone."""
        return f"{signing_input}.{b64(self.private.sign(signing_input.encode()))}"

    def sign(self, header: str, payload: bytes) -> str:
        """A compact JWS over the bytes of a header and a payload as they are."""
        return self.sign_text(f"{b64(header.encode())}.{b64(payload)}")


def thumbprint(public: dict[str, str]) -> str:
    """The RFC 7638 thumbprint, as jwcrypto computes it."""
    return str(JWK(**public).thumbprint())


def jwcrypto_signs(key: Key, header: dict[str, str], payload: bytes) -> str:
    """A compact JWS made by jwcrypto. It sorts a header's members, which is our order too."""
    token = JWS(payload)
    token.allowed_algs = [header["alg"]]
    token.add_signature(JWK(**key.secret), protected=header)
    return str(token.serialize(compact=True))


def joserfc_signs(key: Key, header: dict[str, str], payload: bytes) -> str:
    """A compact JWS made by joserfc. It keeps a header's order."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # It warns of the old name `EdDSA`.
        return joserfc.jws.serialize_compact(
            header, payload, OKPKey.import_key({**key.secret}), algorithms=[header["alg"]]
        )


def jwcrypto_accepts(text: str, public: dict[str, str], algorithm: str = ALGORITHM) -> bool:
    """Whether jwcrypto verifies a JWS of any serialisation with this key."""
    token = JWS()
    token.allowed_algs = [algorithm]
    try:
        token.deserialize(text)
        token.verify(JWK(**public))
    except Exception:  # Whatever it throws, it does not accept.
        return False
    return True


def joserfc_accepts(text: str, public: dict[str, str], algorithm: str = ALGORITHM) -> bool:
    """Whether joserfc verifies a JWS of any serialisation with this key."""
    try:
        key = OKPKey.import_key({**public})
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            if text.startswith("{"):
                joserfc.jws.deserialize_json(json.loads(text), key, algorithms=[algorithm])
            else:
                joserfc.jws.deserialize_compact(text, key, algorithms=[algorithm])
    except Exception:  # Whatever it throws, it does not accept.
        return False
    return True
