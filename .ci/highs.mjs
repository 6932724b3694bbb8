// Solves mixed-integer programs with HiGHS. In: a line of JSON for each, {"name", "lp"}, lp in the CPLEX LP format.
// Out: a line of JSON for each, {"name", "status", "objective", "seconds"}.
import { createInterface } from "node:readline";
import load from "highs";

let highs = await load();
// No gap is left between the best found and the best there can be: what the tests compare are whole numbers.
const options = { mip_rel_gap: 0, mip_abs_gap: 1e-6, output_flag: false };

for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
  const { name, lp } = JSON.parse(line);
  const from = performance.now();
  let result;
  try {
    result = highs.solve(lp, options);
  } catch (error) {
    result = { Status: `failed: ${error}`, ObjectiveValue: 0 };
    highs = await load(); // what has failed is not used again
  }
  const seconds = (performance.now() - from) / 1000;
  console.log(JSON.stringify({ name, status: result.Status, objective: result.ObjectiveValue, seconds }));
}
