"""The sealed report: opened, verified and authenticated again by programs that are not ours.

Outside: Debian's `age` in both directions; PyPI jwcrypto for the device's signature (RFC 7515, RFC 9864) and
its thumbprint (RFC 7638); Python's own hmac and hashlib for the reply (RFC 2104) and the chain of the record
(FIPS 180-4). Only the description in DEVELOPERS.md, "The report", is shared.
"""

import csv
import hashlib
import hmac
import io
import json
import subprocess
import tempfile
from pathlib import Path

from jwcrypto import jwk, jws

from kit.jose import b64, sha256, unb64
from kit.programs import clinic, run, sign_demo
from kit.tally import Tally

GENESIS = "sendaluna-record-1"


def payload(part: str) -> dict:
    """What a signed part says; its signature is looked at elsewhere."""
    return json.loads(unb64(part.split(".")[1]))


def check_signature(tally: Tally, report: str, doc: dict) -> None:
    """The device's signature and its key's thumbprint."""
    key = jwk.JWK(kty="OKP", crv="Ed25519", x=doc["device"])
    token = jws.JWS()
    token.allowed_algs = ["Ed25519", "EdDSA"]
    header = json.loads(unb64(report.split(".")[0]))
    tally.same("header", header, {"alg": "Ed25519", "kid": key.thumbprint(), "typ": "sendaluna-report"})
    token.deserialize(report)
    try:
        token.verify(key)
        tally.check("the device's signature", True)
    except jws.InvalidJWSSignature as error:
        tally.check("the device's signature", False, error)


def check_chain(tally: Tally, doc: dict) -> None:
    """Every event follows from the one before."""
    head = sha256(GENESIS)
    for seq, entry in enumerate(doc["record"], start=1):
        event = json.loads(entry["event"])
        tally.same(f"event {seq}: number", event["seq"], seq)
        tally.same(f"event {seq}: follows", event["prev"], head)
        head = entry.get("withheld") or sha256(entry["event"])
    tally.same("the head of the record", doc["head"], head)


def check_measures(tally: Tally, doc: dict) -> None:
    """The plan's digest, and the figures for the one exercise that was written down."""
    tally.same("the plan in force", doc["plan"], sha256(doc["plans"][-1]))
    measures = json.loads(doc["measures"])
    slide = next(item for item in measures["items"] if item["item"] == "long-arc-quad")
    tally.same("sets from memory", slide["all"]["remembered"], 2.0)


def live(folder: Path, reports_to: str = "") -> Path:
    """A demo clinic and its patient, who writes something down and makes a report."""
    folder.mkdir()
    plan = sign_demo("hip", folder, 45, reports_to)
    code = clinic("letter-code", "--signers", "signers.jws", folder=folder).text.strip()
    patient = ("--data", folder / "home", "--key-in-file", "--json")
    run("sendaluna", "receive", plan, "--code", code, "--side", "left", "--yes", *patient)
    run("sendaluna", "did", "long-arc-quad", "--sets", "2", "--each", "10", *patient)
    made = run("sendaluna", "hand-back", "--out", folder / "out", *patient)
    if made.exit_code != 0:
        raise SystemExit(f"hand-back: {made.text}")
    return folder / "out" / "report.sealed"


def check_inside(tally: Tally, envelope: dict, table: Path) -> None:
    """Signature, reply, chain, measures, and the table beside the sealed file."""
    report = envelope["report"]
    doc = payload(report)
    check_signature(tally, report, doc)
    check_chain(tally, doc)
    check_measures(tally, doc)
    secret = unb64(payload(doc["plans"][-1])["reply_secret"])
    reply = hmac.new(secret, report.encode(), hashlib.sha256).digest()
    tally.same("the reply", envelope["reply"], b64(reply))
    lines = list(csv.reader(io.StringIO(table.read_bytes().decode(), newline="")))
    tally.same("a line an event, and the header", len(lines), len(doc["record"]) + 1)
    tally.same("every line has every field", {len(line) for line in lines}, {9})


def vouched_for(sealed: Path, folder: Path) -> tuple[int, object]:
    """What the clinic's program makes of a sealed file."""
    key = ("--key", "reports.key", "--signers", "signers.jws", "--json")
    answer = clinic("report", "open", sealed, *key, folder=folder)
    return answer.exit_code, answer.json.get("vouched_for")


def main() -> None:
    """Makes two clinics, each with a patient, and looks at what they hand back from outside."""
    tally = Tally()
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place)
        sealed = live(folder / "ours")
        tally.same("ours opens what ours seals", vouched_for(sealed, folder / "ours"), (0, True))

        identity = folder / "id.txt"
        subprocess.run(["age-keygen", "-o", identity], check=True, capture_output=True)
        said = subprocess.run(["age-keygen", "-y", identity], check=True, capture_output=True, text=True)
        sealed = live(folder / "theirs", said.stdout.strip())
        opened = subprocess.run(["age", "-d", "-i", identity, sealed], capture_output=True, check=False)
        tally.same("Debian's age opens what ours seals", opened.returncode, 0)
        check_inside(tally, json.loads(opened.stdout), sealed.parent / "record.csv")

        # To our key, the report of the other clinic: it opens, and is told to be another clinic's.
        to_us = (folder / "ours" / "reports.key.pub").read_text().strip()
        again = folder / "again.sealed"
        subprocess.run(["age", "-r", to_us, "-o", again], input=opened.stdout, check=True)
        key = ("--key", "reports.key", "--json")
        bare = clinic("report", "open", again, *key, folder=folder / "ours")
        tally.same("ours opens what Debian's age seals", (bare.exit_code, bare.json.get("vouched_for")), (0, True))
        ours = clinic("report", "open", again, *key, "--signers", "signers.jws", folder=folder / "ours")
        tally.same("another clinic's report is told", ours.error, "report-clinic-other")
    tally.finish()


if __name__ == "__main__":
    main()
