// English grown by nearly a third, with accents: a language that nobody speaks, to see whether screens have room for others.
const accents = { a: "á", e: "é", i: "í", o: "ö", u: "ü", y: "ý", A: "Á", E: "É", I: "Í", O: "Ö", U: "Ü", Y: "Ý" };
const growth = 1.3;

/** The words of a message, each vowel with an accent and doubled until the word has grown enough. */
export function longer(text) {
  let owed = 0;
  return text.replace(/\p{L}+/gu, (word) => {
    // With the blank after it.
    owed += (word.length + 1) * (growth - 1);
    return [...word].map((letter) => {
      const accent = accents[letter];
      if (accent === undefined) return letter;
      if (owed < 0.5) return accent;
      owed -= 1;
      return accent + accent.toLowerCase();
    }).join("");
  });
}
