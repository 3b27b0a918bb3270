//! A signature as bytes: CMS SignedData over a hash, with the signer's certificate inside.
//!
//! Source: RFC 5652 (CMS), RFC 5035 (signing-certificate-v2), ETSI EN 319 122-1 (CAdES), as ETSI EN 319 142-1 asks for
//! PAdES baseline B-B: one signer, SHA-256, no content, no signing-time among the signed attributes.

use der::asn1::{ObjectIdentifier, OctetString, SetOfVec};
use der::{Any, Decode, Encode, Sequence};
use p256::ecdsa::DerSignature;
use p256::ecdsa::signature::Verifier;
use sha2::{Digest, Sha256};
use spki::AlgorithmIdentifierOwned as Algorithm;
use x509_cert::attr::Attribute;
use x509_cert::ext::pkix::name::GeneralName;
use x509_cert::name::Name;
use x509_cert::serial_number::SerialNumber;

use super::{Certificate, PrivateKey, SealError};

const SIGNED_DATA: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.7.2");
const DATA: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.7.1");
const CONTENT_TYPE: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.3");
const MESSAGE_DIGEST: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.4");
const SIGNING_CERTIFICATE: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.113549.1.9.16.2.47");
const SHA256: ObjectIdentifier = ObjectIdentifier::new_unwrap("2.16.840.1.101.3.4.2.1");
const ECDSA_SHA256: ObjectIdentifier = ObjectIdentifier::new_unwrap("1.2.840.10045.4.3.2");

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct IssuerAndSerial {
    issuer: Name,
    serial: SerialNumber,
}

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct Encapsulated {
    kind: ObjectIdentifier,
}

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct SignerInfo {
    version: u8,
    signer: IssuerAndSerial,
    digest: Algorithm,
    #[asn1(context_specific = "0", tag_mode = "IMPLICIT", constructed = "true")]
    signed: SetOfVec<Attribute>,
    algorithm: Algorithm,
    signature: OctetString,
    #[asn1(context_specific = "1", tag_mode = "IMPLICIT", constructed = "true", optional = "true")]
    unsigned: Option<SetOfVec<Attribute>>,
}

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct SignedData {
    version: u8,
    digests: SetOfVec<Algorithm>,
    content: Encapsulated,
    #[asn1(context_specific = "0", tag_mode = "IMPLICIT", constructed = "true")]
    certificates: SetOfVec<Any>,
    signers: SetOfVec<Any>,
}

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct ContentInfo {
    kind: ObjectIdentifier,
    #[asn1(context_specific = "0", tag_mode = "EXPLICIT")]
    content: SignedData,
}

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct IssuerSerial {
    issuer: Vec<GeneralName>,
    serial: SerialNumber,
}

/// SHA-256 is the default algorithm, and so left out.
#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct CertificateId {
    hash: OctetString,
    issuer_serial: IssuerSerial,
}

#[derive(Clone, Debug, PartialEq, Eq, Sequence)]
struct SigningCertificate {
    certificates: Vec<CertificateId>,
}

/// Returns the signature of a SHA-256 by a key, with its certificate first and those that vouch for it after.
///
/// Errors: `Unusable` if the chain is empty, or the key is not that of its first certificate.
pub fn sign(hash: &[u8; 32], key: &PrivateKey, chain: &[Certificate]) -> Result<Vec<u8>, SealError> {
    let own = chain.first().ok_or_else(|| SealError::unusable("The key has no certificate."))?;
    if own.public_key()? != key.public() {
        return Err(SealError::unusable("The certificate is not of this key."));
    }
    written(hash, key, own, chain)
        .map_err(|why| SealError::unusable(format!("The signature could not be written: {why}.")))
}

fn written(hash: &[u8; 32], key: &PrivateKey, own: &Certificate, chain: &[Certificate]) -> der::Result<Vec<u8>> {
    let sha256 = Algorithm { oid: SHA256, parameters: None };
    let (issuer, serial) = own.issuer_and_serial();
    let signed = SetOfVec::try_from(vec![
        attribute(CONTENT_TYPE, &DATA)?,
        attribute(MESSAGE_DIGEST, &OctetString::new(hash.to_vec())?)?,
        attribute(SIGNING_CERTIFICATE, &names(own)?)?,
    ])?;
    let signature = OctetString::new(key.sign(&signed.to_der()?))?;
    let signer = SignerInfo {
        version: 1,
        signer: IssuerAndSerial { issuer: issuer.clone(), serial: serial.clone() },
        digest: sha256.clone(),
        signed,
        algorithm: Algorithm { oid: ECDSA_SHA256, parameters: None },
        signature,
        unsigned: None,
    };
    let certificates = chain.iter().map(|one| Any::from_der(one.der())).collect::<der::Result<Vec<_>>>()?;
    let content = SignedData {
        version: 1,
        digests: SetOfVec::try_from(vec![sha256])?,
        content: Encapsulated { kind: DATA },
        certificates: SetOfVec::try_from(certificates)?,
        signers: SetOfVec::try_from(vec![Any::from_der(&signer.to_der()?)?])?,
    };
    ContentInfo { kind: SIGNED_DATA, content }.to_der()
}

fn attribute<T: Encode>(oid: ObjectIdentifier, value: &T) -> der::Result<Attribute> {
    Ok(Attribute { oid, values: SetOfVec::try_from(vec![Any::from_der(&value.to_der()?)?])? })
}

/// What binds the signature to one certificate and no other of the same key.
fn names(own: &Certificate) -> der::Result<SigningCertificate> {
    let (issuer, serial) = own.issuer_and_serial();
    let issuer_serial =
        IssuerSerial { issuer: vec![GeneralName::DirectoryName(issuer.clone())], serial: serial.clone() };
    let hash = OctetString::new(Sha256::digest(own.der()).to_vec())?;
    Ok(SigningCertificate { certificates: vec![CertificateId { hash, issuer_serial }] })
}

/// What stands in a signature.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Read {
    /// The signer's certificate.
    pub certificate: Certificate,
    /// Other certificates that came with it.
    pub others: Vec<Certificate>,
    /// The hash that was signed.
    pub hash: [u8; 32],
    /// Something was added that the signer did not sign, such as a time stamp.
    pub additions: bool,
    signed: Vec<u8>,
    signature: Vec<u8>,
}

impl Read {
    /// Says whether the key of the certificate made this signature. Says nothing of whose key it is.
    pub fn is_of_its_key(&self) -> bool {
        let checked = || {
            let key = self.certificate.public_key().ok()?;
            key.verify(&self.signed, &DerSignature::from_bytes(&self.signature).ok()?).ok()
        };
        checked().is_some()
    }
}

/// Reads a signature of the form that [`sign`] writes, with or without additions that nobody signed.
///
/// Errors: `Unusable` with what is not as it must be.
pub fn read(der: &[u8]) -> Result<Read, SealError> {
    let strange = |what: &str| SealError::unusable(format!("The signature is not of the form PAdES B-B: {what}."));
    let whole = ContentInfo::from_der(der).map_err(|why| strange(&format!("it can't be read ({why})")))?;
    let data = whole.content;
    if (whole.kind, data.version, data.content.kind) != (SIGNED_DATA, 1, DATA) {
        return Err(strange("it is not signed data without content"));
    }
    let [signer] = data.signers.as_slice() else { return Err(strange("it does not have one signer")) };
    let signer: SignerInfo = signer.decode_as().map_err(|why| strange(&format!("its signer can't be read ({why})")))?;
    let algorithms = (signer.version, signer.digest.oid, signer.algorithm.oid);
    if algorithms != (1, SHA256, ECDSA_SHA256) || data.digests.iter().any(|one| one.oid != SHA256) {
        return Err(strange("it is not ECDSA with SHA-256"));
    }
    let (certificate, others) = certificates(&data, &signer).map_err(|what| strange(&what))?;
    let hash = attributes(&signer, &certificate).map_err(strange)?;
    Ok(Read {
        certificate,
        others,
        hash,
        additions: signer.unsigned.is_some(),
        signed: signer.signed.to_der().map_err(|_| strange("its attributes can't be written"))?,
        signature: signer.signature.as_bytes().to_vec(),
    })
}

fn certificates(data: &SignedData, signer: &SignerInfo) -> Result<(Certificate, Vec<Certificate>), String> {
    let read =
        |any: &Any| Certificate::read(&any.to_der().map_err(|why| why.to_string())?).map_err(|why| why.to_string());
    let all = data.certificates.iter().map(read).collect::<Result<Vec<_>, _>>()?;
    let wanted = (&signer.signer.issuer, &signer.signer.serial);
    let (mut own, others): (Vec<_>, Vec<_>) = all.into_iter().partition(|one| one.issuer_and_serial() == wanted);
    match (own.pop(), own.is_empty()) {
        (Some(one), true) => Ok((one, others)),
        _ => Err("it does not carry the certificate of its signer".into()),
    }
}

/// Returns the signed hash, if all three attributes are there once and say what they must.
///
/// One of them is the SHA-256 of the signer's certificate, so that its key has vouched for every byte of it: whether a
/// certificate that names itself as issuer also signed itself would say nothing more, and is not asked.
fn attributes(signer: &SignerInfo, own: &Certificate) -> Result<[u8; 32], &'static str> {
    let kind: ObjectIdentifier = single(signer, CONTENT_TYPE).ok_or("the content type is missing")?;
    let hash: OctetString = single(signer, MESSAGE_DIGEST).ok_or("the hash is missing")?;
    let named: SigningCertificate =
        single(signer, SIGNING_CERTIFICATE).ok_or("it does not name its certificate (signing-certificate-v2)")?;
    if kind != DATA {
        return Err("the content type is another");
    }
    if named != names(own).map_err(|_| "its certificate can't be named")? {
        return Err("it names another certificate than its signer's");
    }
    hash.as_bytes().try_into().map_err(|_| "the hash is not a SHA-256")
}

fn single<T: der::DecodeOwned>(signer: &SignerInfo, oid: ObjectIdentifier) -> Option<T> {
    let mut found = signer.signed.iter().filter(|attribute| attribute.oid == oid);
    let (first, more) = (found.next()?, found.next());
    match (first.values.as_slice(), more) {
        ([value], None) => T::from_der(&value.to_der().ok()?).ok(),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::super::Seed;
    use super::super::x509::Holder;
    use super::*;

    fn signer(byte: u8) -> (PrivateKey, Certificate) {
        let seed = Seed::new([byte; 32]).unwrap();
        let key = PrivateKey::fresh(&seed);
        let holder =
            Holder { name: "Ines Varga".into(), organisation: "Wendholt Pipe Repair".into(), role: "foreman".into() };
        let certificate = Certificate::self_signed(&key, &holder, 1_791_972_000_000, &seed).unwrap();
        (key, certificate)
    }

    #[test]
    fn a_signature_says_what_was_signed_and_by_whom() {
        let (key, certificate) = signer(4);
        let der = sign(&[7; 32], &key, std::slice::from_ref(&certificate)).unwrap();
        let read = read(&der).unwrap();
        assert_eq!((read.hash, &read.certificate, read.additions), ([7; 32], &certificate, false));
        assert!(read.is_of_its_key() && read.others.is_empty());
    }

    #[test]
    fn no_changed_byte_stays_unseen() {
        let (key, certificate) = signer(4);
        let der = sign(&[7; 32], &key, std::slice::from_ref(&certificate)).unwrap();
        for at in 0..der.len() {
            for flip in [0x01, 0x20, 0x80] {
                let mut changed = der.clone();
                changed[at] ^= flip;
                let sound = read(&changed)
                    .is_ok_and(|read| read.is_of_its_key() && read.hash == [7; 32] && read.certificate == certificate);
                assert!(!sound, "byte {at} changed by {flip:#x}");
            }
        }
    }

    #[test]
    fn a_key_signs_with_its_own_certificate_only() {
        let ((key, _), (_, other)) = (signer(4), signer(5));
        assert!(sign(&[7; 32], &key, &[other]).is_err());
        assert!(sign(&[7; 32], &key, &[]).is_err());
    }
}
