/** Gates as files, written beside the page. */
import { session } from "../session/session";
import type { GateFileRequest } from "./gateFileJob";
import { newTask, type Task } from "./task";
import { lastEditOf, reportTo } from "./trouble";
import { startGateFile } from "./workers";

/**
 * Makes a writer of its own for one place on the screen.
 * @param save hands a file's content to the reader
 */
export function newGateFiles(save: (fileName: string, content: Blob) => void): Task<GateFileRequest, Blob> {
  return newTask<GateFileRequest, Blob>({
    what: "the writing of the gate's file",
    startWorker: startGateFile,
    grace: 0,
    report: reportTo(session.store),
    lastEdit: () => lastEditOf(session.store.getState()),
    listener: { result: (content, { fileName }) => save(fileName, content) },
  });
}
