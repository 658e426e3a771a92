/** Gate files, written in the background. */
import { session } from "../session/session";
import type { GateFileRequest } from "./gateFileJob";
import { newTask, type Task } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startGateFile } from "./workers";

/**
 * Makes a writer for one place on the screen.
 * @param save offers a file's content to the user
 */
export function newGateFiles(save: (fileName: string, content: Blob) => void): Task<GateFileRequest, Blob> {
  return newTask<GateFileRequest, Blob>({
    what: "the export of the gate file",
    startWorker: startGateFile,
    grace: 0,
    report: reportTo(session.store),
    lastEdit: () => lastEditOf(session.store.getState()),
    listener: { result: (content, { fileName }) => save(fileName, content) },
  });
}
