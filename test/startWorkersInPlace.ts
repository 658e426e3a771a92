import { InPlaceWorker } from "./inPlaceWorker";

Object.assign(globalThis, { Worker: InPlaceWorker });
