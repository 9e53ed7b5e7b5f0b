import { defineConfig } from "vite";
import { viteSingleFile } from "vite-plugin-singlefile";
import { leaveOut } from "./leave-out.ts";
import { packedPage, workerText } from "./pack-page.ts";

/** Nothing that the page carries has getters or globals that must be read for what reading them does. */
const quietReads = { propertyReadSideEffects: false, unknownGlobalSideEffects: false } as const;
const small = {
  treeshake: quietReads,
  output: {
    minify: {
      compress: { target: "es2022", treeshake: { ...quietReads, annotations: true } },
      mangle: { toplevel: true },
      codegen: { removeWhitespace: true },
    },
  },
} as const;

/** Packing and shortening take their seconds. */
const quietTimes = { pluginTimings: false } as const;

/** The page is one file that needs nothing beside it: the program fills it in, or it is opened from disk as it is. */
export default defineConfig({
  root: new URL(".", import.meta.url).pathname,
  base: "./",
  worker: { format: "iife", plugins: () => [leaveOut()], rolldownOptions: { ...small, checks: quietTimes } },
  plugins: [leaveOut(), workerText(), viteSingleFile({ removeViteModuleLoader: true }), namedPage()],
  // The readable build, so that leave-out finds its functions; it is minified with the rest.
  resolve: { alias: { papaparse: new URL("../node_modules/papaparse/papaparse.js", import.meta.url).pathname } },
  build: {
    // after the bundler's own shortening: it finds another hundredth or two
    minify: "terser",
    terserOptions: {
      ecma: 2020,
      toplevel: true,
      compress: { passes: 3, pure_getters: true, unsafe_arrows: true, inline: 1 },
    },
    outDir: "../dist",
    license: { fileName: "page-licences.md" },
    // dist/ also holds the command-line program.
    emptyOutDir: false,
    target: "es2022",
    modulePreload: false,
    reportCompressedSize: false,
    chunkSizeWarningLimit: 1000,
    rolldownOptions: { ...small, checks: quietTimes },
  },
});

/** Packs the bundle's index.html, once all is inside it, and names it page.html, as the program looks for it. */
function namedPage() {
  return {
    name: "named-page",
    enforce: "post" as const,
    generateBundle: {
      order: "post" as const,
      async handler(_options: unknown, bundle: Record<string, { fileName: string; source?: string | Uint8Array }>) {
        const page = bundle["index.html"];
        if (typeof page?.source !== "string") return;
        page.source = await packedPage(page.source);
        page.fileName = "page.html";
      },
    },
  };
}
