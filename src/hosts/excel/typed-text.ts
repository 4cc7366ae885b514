/**
 * Text as it has to be written so that Excel keeps it as text. Excel reads what is written as if it were typed:
 * "6-24-24" would become a date and "1/2" a fraction. An apostrophe in front stops that and is not shown.
 */
export function typedText(text: string): string {
  return wouldBeRead(text) ? `'${text}` : text;
}

function wouldBeRead(text: string): boolean {
  if (/^\s*[=+\-@'#]/.test(text) || /^\s*(true|false)\s*$/i.test(text)) return true;
  return /\d/.test(text) && !/[a-z]/i.test(text.replace(wordsInDatesAndNumbers, ""));
}

const wordsInDatesAndNumbers =
  /\b(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?|[ap]m?|e)\b|(?<=\d)(?:e|[ap]m?)(?=[\d\s+-]|$)/gi;
