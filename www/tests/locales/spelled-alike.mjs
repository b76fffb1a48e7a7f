// Messages that are the same in English and in another language: names of standards, symbols, words that both have.
// In the order of the English files.
export const spelledAlike = {
  es: [],
};
