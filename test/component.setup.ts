import "@testing-library/jest-dom/vitest";
import { cleanup, configure } from "@testing-library/react";
import { afterEach } from "vitest";

// ms; a busy machine takes its time to draw what is waited for
configure({ asyncUtilTimeout: 10_000 });

afterEach(cleanup);
