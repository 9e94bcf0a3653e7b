/** Version of this program, as package.json has it; said in every report. */
export const programVersion = "0.1.0";
