import type * as z from "zod";
import type { surveySchema } from "./schema/survey.ts";

/** The survey document, as read and found in order. */
export type Survey = z.infer<typeof surveySchema>;

export type SurveySite = Survey["site"];
export type SurveyNormals = NonNullable<SurveySite["normals"]>;
export type SurveyAbsence = NonNullable<SurveySite["absences"]>[number];
export type SurveyBed = Survey["beds"][number];
export type SurveyPlanting = SurveyBed["plantings"][number];
export type SurveyMulch = NonNullable<SurveyBed["mulch"]>;
export type SurveySoil = NonNullable<SurveyBed["soil"]>;
export type SurveyObstruction = NonNullable<SurveyBed["obstructions"]>[number];
export type SurveyWatering = SurveyBed["watering"];
export type SurveyHabit = NonNullable<SurveyWatering["habit"]>;
export type SurveyRoof = Survey["roofs"][number];
export type SurveyTank = Survey["tanks"][number];
export type SurveyTap = NonNullable<Survey["taps"]>[number];
export type SurveyDraw = NonNullable<Survey["draws"]>[number];
export type SurveyLeak = NonNullable<Survey["leaks"]>[number];
export type SurveyRestriction = NonNullable<Survey["restrictions"]>[number];
export type SurveyTariff = NonNullable<Survey["tariff"]>;
export type SurveyMoney = NonNullable<Survey["money"]>;
export type SurveyMeasure = NonNullable<Survey["measures"]>[number];
export type SurveyMeter = NonNullable<Survey["meters"]>[number];
export type SurveyReading = NonNullable<Survey["readings"]>[number];
export type SurveyGroup = NonNullable<Survey["groups"]>[number];
export type SurveyFinding = NonNullable<Survey["found"]>[number];
