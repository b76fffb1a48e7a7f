// Messages that are the same in English and in another language: names of standards and classes, symbols, words that both have.
export const spelledAlike = {
  es: [
    "choice-A1",
    "choice-A2L",
    "choice-A3",
    "choice-B2L",
    "choice-en-378-2",
    "choice-jis-b-8607",
    "choice-laminar",
    "choice-real-decreto-552-2019",
    "choice-ufgs-15182",
    "class-use-class-1",
    "field-id",
    "page-title",
    "settings-units-customary-detail",
    "settings-units-metric-detail",
    "stage-plan",
    "truth-false",
  ],
};
