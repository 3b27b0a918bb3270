//! The certificate of a key: whose it is, who says so, and from when to when.
//!
//! Source: RFC 5280 (profile), ETSI EN 319 412-2 (key usage for signatures), RFC 7468 (PEM).

use std::time::Duration;

use der::asn1::{GeneralizedTime, ObjectIdentifier};
use der::{Any, Decode, Encode, Tag};
use p256::ecdsa::signature::Verifier;
use p256::ecdsa::{DerSignature, VerifyingKey};
use p256::pkcs8::DecodePublicKey;
use sha2::{Digest, Sha256};
use spki::{SubjectPublicKeyInfo, SubjectPublicKeyInfoRef};
use x509_cert::attr::AttributeTypeAndValue;
use x509_cert::builder::profile::BuilderProfile;
use x509_cert::builder::{Builder, CertificateBuilder};
use x509_cert::ext::pkix::name::DirectoryString;
use x509_cert::ext::pkix::{BasicConstraints, KeyUsage, KeyUsages, SubjectKeyIdentifier};
use x509_cert::ext::{Extension, ToExtension};
use x509_cert::name::{Name, RdnSequence, RelativeDistinguishedName};
use x509_cert::serial_number::SerialNumber;
use x509_cert::time::{Time, Validity};
use x509_cert::{TbsCertificate, builder};

use super::{PrivateKey, SealError, Seed};

const COMMON_NAME: ObjectIdentifier = ObjectIdentifier::new_unwrap("2.5.4.3");
const ORGANISATION: ObjectIdentifier = ObjectIdentifier::new_unwrap("2.5.4.10");
const TITLE: ObjectIdentifier = ObjectIdentifier::new_unwrap("2.5.4.12");
const ECDSA_SHA256: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.10045.4.3.2");

/// A certificate made now is valid from a little earlier, so that a clock that lags does not call it not yet valid.
const BACK_MS: i64 = 10 * 60 * 1000;
const YEARS: i64 = 10;
const YEAR_MS: i64 = 365 * 86_400_000;
/// The most characters of a name in a certificate (RFC 5280, A.1: ub-common-name, ub-organization-name, ub-title).
const LONGEST: usize = 64;
const BEGIN: &str = "-----BEGIN CERTIFICATE-----";
const END: &str = "-----END CERTIFICATE-----";

/// Whose key it is.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Holder {
    pub name: String,
    pub organisation: String,
    /// What the person is on the job, such as `foreman`.
    pub role: String,
}

/// A certificate: the bytes as they came, and what they say.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Certificate {
    der: Vec<u8>,
    said: x509_cert::Certificate,
}

impl Certificate {
    /// Makes the certificate of a key, signed by the key itself: for signatures that nobody can deny, and not to issue
    /// others. Valid for ten years from a few minutes before `at_ms`.
    ///
    /// Names are cut after 64 characters. Errors: `Unusable` if there is no name, or the instant is before 1970.
    pub fn self_signed(key: &PrivateKey, holder: &Holder, at_ms: i64, seed: &Seed) -> Result<Self, SealError> {
        if holder.name.trim().is_empty() {
            return Err(SealError::unusable("A key needs the name of a person."));
        }
        let fault = |why: builder::Error| SealError::unusable(format!("The certificate could not be made: {why}."));
        let built = build(key, holder, at_ms, seed).map_err(fault)?;
        Self::read(&built.to_der().map_err(|why| fault(why.into()))?)
    }

    /// Reads a certificate (DER).
    ///
    /// Errors: `Unusable` if it is none, or has something behind it.
    pub fn read(der: &[u8]) -> Result<Self, SealError> {
        let said = x509_cert::Certificate::from_der(der)
            .map_err(|why| SealError::unusable(format!("This is not an X.509 certificate: {why}.")))?;
        Ok(Self { der: der.to_vec(), said })
    }

    /// Reads every certificate of a PEM text, in its order; what stands between them is passed over.
    ///
    /// Errors: `Unusable` if there is none, or one can't be read.
    pub fn from_pem(text: &str) -> Result<Vec<Self>, SealError> {
        let damaged = || SealError::unusable("This file holds a certificate that can't be read.");
        let mut found = vec![];
        let mut rest = text;
        while let Some((_, begun)) = rest.split_once(BEGIN) {
            let (body, after) = begun.split_once(END).ok_or_else(damaged)?;
            let whole = format!("{BEGIN}{body}{END}\n");
            let (_, der) = pkcs8::der::pem::decode_vec(whole.as_bytes()).map_err(|_| damaged())?;
            found.push(Self::read(&der)?);
            rest = after;
        }
        if found.is_empty() {
            return Err(SealError::unusable("This file holds no certificate in PEM (BEGIN CERTIFICATE)."));
        }
        Ok(found)
    }

    /// Returns the certificate as PEM text.
    pub fn to_pem(&self) -> String {
        use base64::Engine as _;
        let text = base64::engine::general_purpose::STANDARD.encode(&self.der);
        let lines: Vec<&str> =
            (0..text.len()).step_by(64).filter_map(|at| text.get(at..text.len().min(at + 64))).collect();
        format!("{BEGIN}\n{}\n{END}\n", lines.join("\n"))
    }

    pub fn der(&self) -> &[u8] {
        &self.der
    }

    /// Returns the SHA-256 of the certificate, 64 hexadecimal digits: what two people compare on the telephone.
    pub fn fingerprint(&self) -> String {
        Sha256::digest(&self.der).iter().map(|byte| format!("{byte:02x}")).collect()
    }

    /// Returns whose key it is; what is not said is empty.
    pub fn holder(&self) -> Holder {
        let said = |oid| text_of(self.said.tbs_certificate().subject(), oid);
        Holder { name: said(COMMON_NAME), organisation: said(ORGANISATION), role: said(TITLE) }
    }

    /// Returns who says so: the common name of the issuer, or its organisation.
    pub fn issuer_name(&self) -> String {
        let said = |oid| text_of(self.said.tbs_certificate().issuer(), oid);
        let name = said(COMMON_NAME);
        if name.is_empty() { said(ORGANISATION) } else { name }
    }

    /// Returns from when to when it is valid, in milliseconds since 1970 UTC.
    pub fn valid_ms(&self) -> (i64, i64) {
        let validity = self.said.tbs_certificate().validity();
        let ms = |time: Time| i64::try_from(time.to_unix_duration().as_millis()).unwrap_or(i64::MAX);
        (ms(validity.not_before), ms(validity.not_after))
    }

    /// Returns the key that signatures are checked with.
    ///
    /// Errors: `Unusable` for any other key than ECDSA over P-256.
    pub fn public_key(&self) -> Result<VerifyingKey, SealError> {
        let other = |_| SealError::unusable("The certificate is not of an elliptic-curve key over P-256.");
        let info =
            self.said.tbs_certificate().subject_public_key_info().to_der().map_err(|_| SealError::unusable(""))?;
        VerifyingKey::from_public_key_der(&info).map_err(other)
    }

    /// Says whether the key may sign documents (RFC 5280, 4.2.1.3). A certificate that does not limit it allows it.
    pub fn may_sign(&self) -> bool {
        let usage = self.said.tbs_certificate().get_extension::<KeyUsage>();
        usage.is_ok_and(|usage| usage.is_none_or(|(_, usage)| usage.digital_signature() || usage.non_repudiation()))
    }

    /// Says whether `issuer` signed this certificate and may sign certificates.
    ///
    /// Only issuers with a P-256 key can be checked; for another, trust the certificate itself.
    pub fn issued_by(&self, issuer: &Self) -> bool {
        let named = self.said.tbs_certificate().issuer() == issuer.said.tbs_certificate().subject();
        let limits = issuer.said.tbs_certificate().get_extension::<BasicConstraints>();
        let may = limits.is_ok_and(|limits| limits.is_some_and(|(_, limits)| limits.ca));
        named && may && self.signed_with(issuer)
    }

    fn signed_with(&self, other: &Self) -> bool {
        let signed = || {
            let key = other.public_key().ok()?;
            let signature = DerSignature::from_bytes(self.said.signature().as_bytes()?).ok()?;
            let body = self.said.tbs_certificate().to_der().ok()?;
            key.verify(&body, &signature).ok()
        };
        self.said.signature_algorithm().oid == ECDSA_SHA256 && signed().is_some()
    }

    pub(super) fn issuer_and_serial(&self) -> (&Name, &SerialNumber) {
        (self.said.tbs_certificate().issuer(), self.said.tbs_certificate().serial_number())
    }
}

fn text_of(name: &Name, oid: ObjectIdentifier) -> String {
    let found = name.iter().find(|part| part.oid == oid);
    let text = found.and_then(|part| part.value.decode_as::<DirectoryString>().ok());
    text.map_or_else(String::new, |text| text.value().into_owned())
}

fn build(key: &PrivateKey, holder: &Holder, at_ms: i64, seed: &Seed) -> Result<x509_cert::Certificate, builder::Error> {
    let from = at_ms - BACK_MS;
    let validity = Validity::new(time(from)?, time(from + YEARS * YEAR_MS)?);
    let mut serial = seed.derive_16("serial number of the certificate");
    // Positive, and never shorter than it looks (RFC 5280, 4.1.2.2).
    serial[0] = serial[0] & 0x3f | 0x40;
    let public = SubjectPublicKeyInfo::from_key(&key.public())?;
    let made = CertificateBuilder::new(SelfSigned(name(holder)?), SerialNumber::new(&serial)?, validity, public)?;
    made.build::<_, DerSignature>(key.inner())
}

fn time(ms: i64) -> der::Result<Time> {
    let since = Duration::from_secs(u64::try_from(ms / 1000).map_err(|_| der::ErrorKind::DateTime)?);
    Ok(Time::GeneralTime(GeneralizedTime::from_unix_duration(since)?))
}

fn name(holder: &Holder) -> der::Result<Name> {
    let mut all = RdnSequence::default();
    for (oid, text) in [(ORGANISATION, &holder.organisation), (TITLE, &holder.role), (COMMON_NAME, &holder.name)] {
        let text: String = text.trim().chars().take(LONGEST).collect();
        if !text.is_empty() {
            let value = Any::new(Tag::Utf8String, text.into_bytes())?;
            let mut part = RelativeDistinguishedName::default();
            part.insert(AttributeTypeAndValue { oid, value })?;
            all.push(part);
        }
    }
    Name::from_der(&all.to_der()?)
}

/// A certificate that a key signs for itself.
struct SelfSigned(Name);

impl BuilderProfile for SelfSigned {
    fn get_issuer(&self, subject: &Name) -> Name {
        subject.clone()
    }

    fn get_subject(&self) -> Name {
        self.0.clone()
    }

    fn build_extensions(
        &self,
        key: SubjectPublicKeyInfoRef<'_>,
        _: SubjectPublicKeyInfoRef<'_>,
        body: &TbsCertificate,
    ) -> builder::Result<Vec<Extension>> {
        let subject = body.subject();
        let limits = BasicConstraints { ca: false, path_len_constraint: None };
        let usage = KeyUsage(KeyUsages::DigitalSignature | KeyUsages::NonRepudiation);
        let mut all = vec![limits.to_extension(subject, &[])?];
        all.push(usage.to_extension(subject, &all)?);
        all.push(SubjectKeyIdentifier::try_from(key)?.to_extension(subject, &all)?);
        Ok(all)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOON: i64 = 1_791_972_000_000;

    fn ekdal() -> Holder {
        Holder { name: "Tomas Ekdal".into(), organisation: "Wendholt Pipe Repair".into(), role: "technician".into() }
    }

    fn made(byte: u8) -> Certificate {
        let seed = Seed::new([byte; 32]).unwrap();
        Certificate::self_signed(&PrivateKey::fresh(&seed), &ekdal(), NOON, &seed).unwrap()
    }

    #[test]
    fn a_certificate_says_whose_key_it_is_and_from_when() {
        let certificate = made(1);
        assert_eq!(certificate.holder(), ekdal());
        assert!(certificate.may_sign() && certificate.signed_with(&certificate));
        let (from, to) = certificate.valid_ms();
        assert!(from < NOON && to > NOON + 9 * YEAR_MS);
        assert_eq!(certificate.fingerprint().len(), 64);
    }

    #[test]
    fn nobody_else_issued_it_and_it_issues_nothing() {
        let (one, two) = (made(1), made(2));
        assert!(!one.issued_by(&two) && !one.issued_by(&one), "CA:FALSE");
        assert_ne!(one.fingerprint(), two.fingerprint());
    }

    #[test]
    fn a_pem_file_gives_back_every_certificate_in_it() {
        let (one, two) = (made(1), made(2));
        let text = format!("Crew of Quillmere\n{}between\n{}", one.to_pem(), two.to_pem());
        assert_eq!(Certificate::from_pem(&text).unwrap(), [one, two]);
        assert!(Certificate::from_pem("nothing").is_err());
        assert!(Certificate::from_pem("-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----").is_err());
    }

    #[test]
    fn a_changed_certificate_is_no_longer_signed_by_its_key() {
        let der = made(1).der().to_vec();
        let at = der.windows(5).position(|part| part == b"Tomas").unwrap();
        let mut changed = der;
        changed[at] = b'R';
        assert!(Certificate::read(&changed).is_ok_and(|changed| !changed.signed_with(&changed)));
    }

    #[test]
    fn names_with_signs_and_long_names_are_kept_as_text() {
        let seed = Seed::new([9; 32]).unwrap();
        let holder = Holder { name: format!("Ōé, \"O=x\"+{}", "n".repeat(90)), ..ekdal() };
        let key = PrivateKey::fresh(&seed);
        let certificate = Certificate::self_signed(&key, &holder, NOON, &seed).unwrap();
        assert_eq!(certificate.holder().name.chars().count(), LONGEST);
        assert!(certificate.holder().name.starts_with("Ōé, \"O=x\"+n"));
        assert!(Certificate::self_signed(&key, &Holder::default(), NOON, &seed).is_err());
    }
}
