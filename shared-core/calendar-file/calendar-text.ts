const LONGEST_LINE = 75;

/** Escapes a TEXT value (RFC 5545, 3.3.11) and drops control characters other than tabs. */
export function escapedText(text: string): string {
  return text
    .replaceAll('\\', '\\\\')
    .replaceAll(';', '\\;')
    .replaceAll(',', '\\,')
    .replace(/\r\n|\n|\r/g, '\\n')
    .replace(/\p{Cc}/gu, (control) => (control === '\t' ? control : ''));
}

/** Folds a line after at most 75 octets of UTF-8 (RFC 5545, 3.1), never inside a character. */
export function foldedLine(line: string): string {
  const lines: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > LONGEST_LINE) {
      lines.push(part);
      part = ' ';
      octets = 1;
    }
    part += character;
    octets += size;
  }
  return [...lines, part].join('\r\n');
}

function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}
