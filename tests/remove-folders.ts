import { afterAll } from "vitest";
import { removeFolders } from "./folders.ts";

// run anew for every file of tests, unlike the modules that they share
afterAll(removeFolders);
