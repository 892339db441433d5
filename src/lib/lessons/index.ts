/** The one door to content/ for the server. What a text embeds and a page needs in the browser is in blocks/. */
export { answerCheck } from './answer-check';
export { LESSONS, lessonAt, neighbours } from './catalogue';
export type { FieldCheck, LessonCheck, ReasonCheck } from './check';
export type { CheckResult } from './check-view';
export { GLOSSARY } from './glossary/glossary';
export { glossaryView, type TermView } from './glossary/glossary-view';
export type { Lesson } from './lesson';
export type { CheckView, LessonView, SumView } from './lesson-view';
export { answeredView, lessonView } from './page-view';
export { searchBook, type FoundGroup } from './search/book';
export { askable, exampleOf, shopExamples } from './shop-examples';
export type { LessonSum } from './sum';
export { wallView } from './wall-view';
