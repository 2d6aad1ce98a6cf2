import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The journey of a first visit makes the whole search of the demo rig, whose results the other visits find. */
class JourneyFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isFirst = ({ moduleId }: TestSpecification) => moduleId.endsWith("/browser/journey.test.ts");
    return [...sorted.filter(isFirst), ...sorted.filter((file) => !isFirst(file))];
  }
}

export default defineConfig({
  test: {
    // As many files at once as there are cores; the browser tests set their own.
    projects: ["packages/*", "apps/*", "tests", "tests/browser"],
    maxWorkers: "100%",
    sequence: { sequencer: JourneyFirst },
  },
});
