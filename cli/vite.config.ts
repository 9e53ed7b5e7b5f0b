import { readFileSync } from "node:fs";
import { defineConfig } from "vite";

/**
 * The program and the library, with every package inside. Several files, so that help and version, which load
 * `wanecast.cjs` and `options.cjs` alone, come at once; `index.cjs` is the engine and, to others,
 * the library; `fit-worker.cjs` is what further threads run.
 */
export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  plugins: [sheetsAsText()],
  ssr: { noExternal: true },
  build: {
    ssr: true,
    outDir: "dist",
    // dist/ also holds the page
    emptyOutDir: false,
    // the notices of the packages inside
    license: { fileName: "licences.md" },
    target: "node20",
    minify: true,
    reportCompressedSize: false,
    rolldownOptions: {
      input: { wanecast: "cli/main.ts", index: "src/index.ts", "fit-worker": "cli/fit-worker.ts" },
      output: {
        format: "cjs",
        entryFileNames: "[name].cjs",
        chunkFileNames: "[name].cjs",
        codeSplitting: {
          includeDependenciesRecursively: false,
          groups: [
            {
              name: "options",
              test: /node_modules\/commander\/|\/cli\/(exit-codes|help-text|print|progress|terminal-text|usage-hint|verb-options)\.ts$/,
              priority: 2,
            },
            {
              name: "verbs",
              test: /\/cli\/(?!main|program|fit-worker)[\w/-]+\.ts$|\/sample-data\/\w+\.csv$/,
              priority: 1,
            },
          ],
        },
      },
    },
  },
});

/** The sample's sheets go into the program as text. */
function sheetsAsText() {
  return {
    name: "sheets-as-text",
    load: (id: string) => (id.endsWith(".csv") ? `export default ${JSON.stringify(readFileSync(id, "utf8"))};` : null),
  };
}
