//! The clinic's signing: keys sealed with a passphrase, signed parts.
