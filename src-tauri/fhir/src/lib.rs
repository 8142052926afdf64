//! The report as an FHIR R4 document.
