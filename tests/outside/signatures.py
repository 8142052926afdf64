"""Plan files and outside libraries, both ways, and what only ours refuses.

Outside: PyPI jwcrypto and joserfc (JWS, RFC 7515), both over OpenSSL's Ed25519; values published in
RFC 8032 and RFC 8037.

1. Published values come out of the outside libraries as published.
2. Every part that the clinic's program signs is verified by both libraries, and every byte of it
   is the one writer's.
3. Parts signed by both libraries are accepted by the clinic's and the patient's program.
4. Parts in every other form are refused by both programs, each with its code, although rightly
   signed; beside each stands whether a library lets it through.
"""

import json
import tempfile
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PrivateKey
from joserfc.jwk import OKPKey

from kit import jose
from kit.hostile import Case, hostile
from kit.jose import Key, b64, compact_json, sha256, unb64
from kit.programs import clinic_does, receive, show, sign_demo, sign_plan, sign_statement
from kit.tally import Tally

SIGNERS, PRECAUTIONS, PLAN = "sendaluna-signers", "sendaluna-precautions", "sendaluna-plan"

# RFC 8032 §7.1, tests 1 to 3: seed, message, signature.
RFC_8032 = (
    (
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
        "",
        "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
        "d25bf5f0595bbe24655141438e7a100b",
    ),
    (
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
        "72",
        "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
        "387b2eaeb4302aeeb00d291612bb0c00",
    ),
    (
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
        "af82",
        "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc659"
        "4a7c15e9716ed28dc027beceea1ec40a",
    ),
)
# RFC 8037 A.2 (public key), A.3 (thumbprint), A.4 and A.5 (payload and signature).
RFC_8037_X = "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo"
RFC_8037_THUMBPRINT = "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k"
RFC_8037_PAYLOAD = b"Example of Ed25519 signing"
RFC_8037_JWS = (
    "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc.hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6d"
    "WbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg"
)
# The clinic, the surgeon and the therapist sign with the keys of RFC 8032, tests 1 to 3. The first
# is RFC 8037 A.1 too.
CLINIC, SURGEON, THERAPIST = (Key(bytes.fromhex(seed)) for seed, _, _ in RFC_8032)
STRANGER = Key(bytes(range(32)))

# Signers list, statement and plan.
Docs = tuple[dict[str, Any], dict[str, Any], dict[str, Any]]
Sign = Callable[[Key, dict[str, str], bytes], str]


def by_hand(key: Key, header: dict[str, str], payload: bytes) -> str:
    """Signed by the primitive alone."""
    return key.sign(compact_json(header), payload)


@dataclass(frozen=True)
class Parts:
    """A plan file by its parts."""

    signers: Any
    precautions: list[Any]
    plan: Any

    @staticmethod
    def read(file: Path) -> "Parts":
        """The parts of a file."""
        value = json.loads(file.read_bytes())
        return Parts(value["signers"], value["precautions"], value["plan"])

    def text(self) -> str:
        """The file."""
        members = {"signers": self.signers, "precautions": self.precautions, "plan": self.plan}
        return compact_json({"sendaluna": 1, **members})

    def all(self) -> list[tuple[str, str]]:
        """Every part with its type."""
        statements = [(PRECAUTIONS, part) for part in self.precautions]
        return [(SIGNERS, self.signers), *statements, (PLAN, self.plan)]


def payload_of(part: str) -> bytes:
    """The payload's bytes."""
    return unb64(part.split(".")[1])


def published(tally: Tally) -> None:
    """The outside libraries agree with the RFCs, so they may judge ours."""
    for seed, message, signature in RFC_8032:
        private = Ed25519PrivateKey.from_private_bytes(bytes.fromhex(seed))
        made = private.sign(bytes.fromhex(message)).hex()
        tally.same(f"RFC 8032 §7.1, seed {seed[:8]}", made, signature)
    tally.same("RFC 8037 A.2", CLINIC.x, RFC_8037_X)
    tally.same("RFC 8037 A.3, jwcrypto", CLINIC.kid, RFC_8037_THUMBPRINT)
    joserfc_kid = OKPKey.import_key({**CLINIC.public}).thumbprint()
    tally.same("RFC 8037 A.3, joserfc", joserfc_kid, RFC_8037_THUMBPRINT)
    for name, sign in (("jwcrypto", jose.jwcrypto_signs), ("joserfc", jose.joserfc_signs)):
        made = sign(CLINIC, {"alg": "EdDSA"}, RFC_8037_PAYLOAD)
        tally.same(f"RFC 8037 A.4 and A.5, {name}", made, RFC_8037_JWS)


def ours_to_theirs(tally: Tally, folder: Path, file: Path) -> None:
    """What our clinic signed: form, bytes and signatures."""
    parts = Parts.read(file)
    tally.same(f"{file.name}: exact bytes", file.read_bytes(), parts.text().encode())
    doc = json.loads(payload_of(parts.plan))
    named = [sha256(part) for part in parts.precautions]
    tally.same(f"{file.name}: statements by SHA-256", doc["statements"], named)
    list_doc = json.loads(payload_of(parts.signers))
    keys = [list_doc["clinic_key"], *(signer["key"] for signer in list_doc["signers"])]
    by_kid = {jose.thumbprint(public): public for public in map(public_of, keys)}
    for typ, part in parts.all():
        header, payload = part.split(".")[0], payload_of(part)
        public = by_kid[json.loads(unb64(header))["kid"]]
        wanted = {"alg": "Ed25519", "kid": jose.thumbprint(public), "typ": typ}
        name = f"{file.name}: {typ}"
        tally.same(f"{name}: header", unb64(header).decode(), compact_json(wanted))
        again = compact_json(json.loads(payload)).encode()
        tally.same(f"{name}: payload's exact bytes", payload, again)
        tally.same(f"{name}: strict base64url", part, ".".join(b64(unb64(s)) for s in part.split(".")))
        tally.check(f"{name}: verified by jwcrypto", jose.jwcrypto_accepts(part, public))
        tally.check(f"{name}: verified by joserfc", jose.joserfc_accepts(part, public))
        changed = f"{part[:-90]}{'A' if part[-90] != 'A' else 'B'}{part[-89:]}"
        accepted = jose.jwcrypto_accepts(changed, public) or jose.joserfc_accepts(changed, public)
        tally.check(f"{name}: changed, verified by neither", not accepted)
    clinic_kid = jose.thumbprint(public_of(keys[0]))
    tally.same(f"{file.name}: the clinic key signs the list", kid_of(parts.signers), clinic_kid)
    shown = show(file).json
    tally.same(f"{file.name}: shown clinic key", shown.get("clinic_key"), clinic_kid)
    tally.same(f"{file.name}: shown plan digest", shown.get("plan_digest"), sha256(parts.plan))
    code = clinic_does("letter-code", "--signers", folder / "signers.jws", "--json").json["letter_code"]
    tally.same(f"{file.name}: shown letter code", shown.get("letter_code"), code)


def public_of(x: str) -> dict[str, str]:
    """The public JWK of RFC 8037 §2."""
    return {"kty": "OKP", "crv": "Ed25519", "x": x}


def kid_of(part: str) -> str:
    """The key that a part names."""
    return str(json.loads(unb64(part.partition(".")[0]))["kid"])


def superseding(tally: Tally, first: Path, second: Path) -> None:
    """A second revision names the first by its digest."""
    doc = json.loads(payload_of(Parts.read(second).plan))
    tally.same("plan-2: supersedes by SHA-256", doc["head"].get("supersedes"), sha256(Parts.read(first).plan))
    number = json.loads(payload_of(Parts.read(second).signers))["number"]
    tally.same("plan-2: least signers number", doc["head"].get("least_signers"), number)


def documents(file: Path) -> Docs:
    """The documents of a file that our clinic signed, with keys that Python knows in place of its own."""
    parts = Parts.read(file)
    signers, statement, plan = (
        json.loads(payload_of(part)) for part in (parts.signers, parts.precautions[0], parts.plan)
    )
    signers["clinic_key"] = CLINIC.x
    keys = {"surgeon": SURGEON.x, "therapist": THERAPIST.x}
    for signer in signers["signers"]:
        signer["key"] = keys[signer["id"]]
    return signers, statement, plan


def sign_all(docs: Docs, sign: Sign) -> Parts:
    """A whole file, signed outside."""
    signers, statement, plan = docs
    list_part = sign(CLINIC, CLINIC.header(SIGNERS), compact_json(signers).encode())
    statement_part = sign(SURGEON, SURGEON.header(PRECAUTIONS), compact_json(statement).encode())
    return Parts(list_part, [statement_part], sign_plan_part(plan, [statement_part], sign))


def sign_plan_part(plan: dict[str, Any], statements: list[str], sign: Sign = by_hand) -> str:
    """A plan that rests on these statements."""
    plan = {**plan, "statements": [sha256(part) for part in statements]}
    return sign(THERAPIST, THERAPIST.header(PLAN), compact_json(plan).encode())


def theirs_to_ours(tally: Tally, temp: Path, parts: Parts, name: str) -> None:
    """What a library signed, our programs accept."""
    file = temp / f"{name}.sendaluna"
    file.write_text(parts.text(), encoding="utf-8")
    answer = show(file)
    tally.same(f"{name} to clinic: accepted", answer.exit_code, 0)
    tally.same(f"{name} to clinic: key of RFC 8037 A.3", answer.json.get("clinic_key"), RFC_8037_THUMBPRINT)
    digests = [statement["digest"] for statement in answer.json.get("statements", [])]
    tally.same(f"{name} to clinic: statements", digests, [sha256(part) for part in parts.precautions])
    thumbprints = [signer["thumbprint"] for signer in answer.json.get("signers", [])]
    tally.same(f"{name} to clinic: signers", thumbprints, [SURGEON.kid, THERAPIST.kid])
    taken = receive(file, temp / f"home-{name}", answer.json.get("letter_code", ""), "left")
    tally.check(f"{name} to patient: received", taken.json.get("received") is True, taken.text)


@dataclass(frozen=True)
class Attack:
    """A hostile file, and how the libraries take the part that makes it so."""

    kind: str
    case: Case
    text: str
    public: dict[str, str]


def attacks(docs: Docs) -> list[Attack]:
    """Every hostile form of every part, in a file that is otherwise good."""
    good = sign_all(docs, by_hand)
    plan = docs[2]
    found = []
    for case in hostile(SIGNERS, CLINIC, payload_of(good.signers), STRANGER):
        found.append(Attack("signers", case, replace(good, signers=case.part).text(), CLINIC.public))
    for case in hostile(PRECAUTIONS, SURGEON, payload_of(good.precautions[0]), STRANGER):
        parts = Parts(good.signers, [case.part], sign_plan_part(plan, [case.text]))
        found.append(Attack("precautions", case, parts.text(), SURGEON.public))
    for case in hostile(PLAN, THERAPIST, payload_of(good.plan), STRANGER):
        found.append(Attack("plan", case, replace(good, plan=case.part).text(), THERAPIST.public))
    return [*found, *weak_keys(docs, good), *files(good), *rights(docs, good)]


def weak_keys(docs: Docs, good: Parts) -> list[Attack]:
    """Keys of small order, which RFC 8032 §5.1.7 does not rule out: under y = 1, the signature
    R = y and S = 0 verifies for every message (Chalkias, Garillot and Nikolaenko 2020, "Taming the many
    EdDSAs").
    """
    weak = public_of(b64(b"\x01" + bytes(31)))
    anything = b64(b"\x01" + bytes(63))
    signers, _, plan = docs

    def forged(typ: str, doc: dict[str, Any]) -> str:
        header = {"alg": "Ed25519", "kid": jose.thumbprint(weak), "typ": typ}
        return f"{b64(compact_json(header).encode())}.{b64(compact_json(doc).encode())}.{anything}"

    listed = [{**s, "key": weak["x"]} if s["id"] == "therapist" else s for s in signers["signers"]]
    with_weak = {**signers, "signers": listed}
    list_part = CLINIC.sign(compact_json(CLINIC.header(SIGNERS)), compact_json(with_weak).encode())
    rests = {**plan, "statements": [sha256(part) for part in good.precautions]}
    by_weak = Case(
        "by a signer's key of small order", "Chalkias et al. 2020", "key-weak", forged(PLAN, rests)
    )
    own = Case(
        "by a clinic key of small order",
        "Chalkias et al. 2020",
        "key-weak",
        forged(SIGNERS, {**signers, "clinic_key": weak["x"]}),
    )
    return [
        Attack("plan", by_weak, Parts(list_part, good.precautions, by_weak.part).text(), weak),
        Attack("signers", own, replace(good, signers=own.part).text(), weak),
    ]


def files(good: Parts) -> list[Attack]:
    """Files of good parts in other bytes."""
    text = good.text()
    value = json.loads(text)
    rule = "ours: exact bytes"
    forms = {
        "a space": ("file-altered", text.replace('"sendaluna":1', '"sendaluna": 1')),
        "a final line break": ("file-altered", f"{text}\n"),
        "members in reverse order": ("file-altered", compact_json(dict(reversed(value.items())))),
        "an unknown member": ("file-altered", compact_json({**value, "more": 1})),
        "a member twice": ("part-duplicate-member", text.replace("{", '{"sendaluna":1,', 1)),
        "a newer version": ("format-newer", text.replace('"sendaluna":1', '"sendaluna":2')),
        "no precautions": ("statement-missing", compact_json({**value, "precautions": []})),
        "precautions twice": (
            "statement-extra",
            compact_json({**value, "precautions": good.precautions * 2}),
        ),
    }
    return [
        Attack("file", Case(name, rule, refusal, good.plan), form, THERAPIST.public)
        for name, (refusal, form) in forms.items()
    ]


def rights(docs: Docs, good: Parts) -> list[Attack]:
    """Rightly signed, by someone of the clinic without the right."""
    _, statement, plan = docs
    rests = compact_json({**plan, "statements": [sha256(part) for part in good.precautions]}).encode()
    by_surgeon = by_hand(SURGEON, SURGEON.header(PLAN), rests)
    by_clinic = by_hand(CLINIC, CLINIC.header(PLAN), rests)
    stated = by_hand(THERAPIST, THERAPIST.header(PRECAUTIONS), compact_json(statement).encode())
    by_therapist = Parts(good.signers, [stated], sign_plan_part(plan, [stated]))

    def case(name: str, refusal: str, part: str) -> Case:
        return Case(name, "ours: who may say what", refusal, part)

    surgeon = case("by the surgeon", "signer-without-right", by_surgeon)
    clinic = case("by the clinic key", "signer-unknown", by_clinic)
    therapist = case("by the therapist", "signer-without-right", stated)
    return [
        Attack("plan", surgeon, replace(good, plan=by_surgeon).text(), SURGEON.public),
        Attack("plan", clinic, replace(good, plan=by_clinic).text(), CLINIC.public),
        Attack("precautions", therapist, by_therapist.text(), THERAPIST.public),
    ]


def refused(tally: Tally, temp: Path, found: list[Attack], good: Path) -> None:
    """Both programs refuse every hostile file with its code; a home keeps nothing of any of them."""
    hostile_files = [temp / f"hostile-{number}.sendaluna" for number in range(len(found))]
    for file, attack in zip(hostile_files, found, strict=True):
        file.write_text(attack.text, encoding="utf-8")
    code, home = show(good).json.get("letter_code", ""), temp / "home-refused"
    with ThreadPoolExecutor(2) as pool:
        clinics = pool.submit(lambda: [show(file) for file in hostile_files])
        homes = pool.submit(lambda: [receive(file, home, code, "left") for file in hostile_files])
    for attack, at_clinic, at_home in zip(found, clinics.result(), homes.result(), strict=True):
        name, wanted = f"{attack.kind}: {attack.case.name}", (1, attack.case.refusal)
        tally.same(f"{name}: refused at the clinic", (at_clinic.exit_code, at_clinic.error), wanted)
        tally.same(f"{name}: refused at home", (at_home.exit_code, at_home.error), wanted)
    taken = receive(good, home, code, "left").json
    tally.same(
        "after all that, the good file is the first",
        (taken.get("received"), taken.get("same_again")),
        (True, False),
    )


def compared(found: list[Attack]) -> None:
    """Says for each form, which is refused by ours, whether a library lets it through."""
    rows: dict[tuple[str, ...], list[str]] = {}
    for attack in (attack for attack in found if attack.kind != "file"):
        case = attack.case
        judges = (jose.jwcrypto_accepts, jose.joserfc_accepts)
        theirs = ("accepts" if judge(case.text, attack.public) else "refuses" for judge in judges)
        rows.setdefault((case.name, case.source, case.refusal, *theirs), []).append(attack.kind)
    row = "{:<46}{:<24}{:<23}{:<10}{:<9}{}".format
    print(row("form", "rule", "ours refuses", "jwcrypto", "joserfc", "of"))
    for cells, kinds in rows.items():
        print(row(*cells, ", ".join(kinds)))


def main() -> None:
    tally = Tally()
    published(tally)
    with tempfile.TemporaryDirectory() as made:
        temp = Path(made)
        hip, knee = temp / "hip", temp / "knee"
        hip.mkdir()
        knee.mkdir()
        plan = sign_demo("hip", hip, 45)
        ours_to_theirs(tally, knee, sign_demo("knee", knee, 17))
        sign_statement(hip, "lift", "therapist")
        second = sign_plan(hip, "plan-2", ["precautions", "lift"], previous="plan")
        for file in (plan, second):
            ours_to_theirs(tally, hip, file)
        superseding(tally, plan, second)

        docs = documents(plan)
        signed = {
            "jwcrypto": sign_all(docs, jose.jwcrypto_signs),
            "joserfc": sign_all(docs, jose.joserfc_signs),
            "by hand": sign_all(docs, by_hand),
        }
        same = len({parts.text() for parts in signed.values()}) == 1
        tally.check("both libraries and the primitive sign the same bytes", same)
        for name, parts in signed.items():
            theirs_to_ours(tally, temp, parts, name)
        found = attacks(docs)
        compared(found)
        refused(tally, temp, found, temp / "by hand.sendaluna")
    tally.finish()


if __name__ == "__main__":
    main()
