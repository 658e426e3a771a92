/** The worker that makes gate schedules: one request in; progress, then the schedules out. */
import { playScore, type ScoreReply, type ScoreRequest } from "./scoreScheduling";

const reply = (message: ScoreReply) => self.postMessage(message);

self.addEventListener("message", (event: MessageEvent<ScoreRequest>) => {
  reply({ played: playScore(event.data, (progress) => reply({ progress })) });
});
