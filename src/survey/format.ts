/** What a survey document says that it is; apart from its schema, so that a page can write one without checking it. */
export const surveyFormat = "grounds-survey";
export const surveyVersion = 1;
