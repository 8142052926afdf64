/** A telephone number does not break at its hyphens: a word joiner stands on either side. */
export const whole = (said: string): string => said.replaceAll(/(?<=\d)-(?=\d)/g, '\u2060-\u2060');
