import worklet from './capture.worklet?worker&url';
import type { EarProblem } from './ears';
import { MicrophoneProblem, type Microphone } from './microphone';

/** Its own noise suppression helped in trials; ours comes after it. Never 16 kHz: ours wants the whole band. */
const WANTED: MediaTrackConstraints = {
  channelCount: 1,
  echoCancellation: true,
  noiseSuppression: true,
  autoGainControl: true,
};
const PROBLEMS: Record<string, EarProblem> = {
  NotFoundError: 'no microphone',
  OverconstrainedError: 'no microphone',
  NotAllowedError: 'not allowed',
  SecurityError: 'not allowed',
  NotReadableError: 'microphone in use',
  AbortError: 'microphone in use',
};

/** The device's microphone, and a context that carries its sound and wakes up again by itself. */
export const deviceMicrophone: Microphone = {
  async open(lost) {
    if (!('mediaDevices' in navigator) || !('AudioWorkletNode' in globalThis))
      throw new MicrophoneProblem('not supported');
    // Made before the device asks: later it would no longer be inside the touch.
    const context = new AudioContext({ latencyHint: 'interactive' });
    const stop = staysAwake(context);
    const tracks: MediaStreamTrack[] = [];
    const close = () => {
      stop();
      for (const track of tracks) track.stop();
      if (context.state !== 'closed') void context.close().catch(() => undefined);
    };
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ audio: WANTED });
      tracks.push(...stream.getTracks());
      const ended = () => {
        close();
        void whyEnded().then(lost);
      };
      for (const track of tracks) track.addEventListener('ended', ended);
      return { rate: context.sampleRate, connect: await captureOf(stream, context), close };
    } catch (error) {
      close();
      throw new MicrophoneProblem(problemOf(error), error);
    }
  },
};

const problemOf = (error: unknown): EarProblem =>
  (error instanceof DOMException ? PROBLEMS[error.name] : undefined) ?? 'not supported';

/** Its owner took the permission back, or the device is gone. */
async function whyEnded(): Promise<EarProblem> {
  const permission = await navigator.permissions.query({ name: 'microphone' }).catch(() => undefined);
  return permission?.state === 'denied' ? 'not allowed' : 'microphone lost';
}

async function captureOf(stream: MediaStream, context: AudioContext): Promise<() => MessagePort> {
  await context.audioWorklet.addModule(worklet);
  const node = new AudioWorkletNode(context, 'capture', {
    numberOfInputs: 1,
    numberOfOutputs: 0,
    channelCount: 1,
    channelCountMode: 'explicit',
  });
  context.createMediaStreamSource(stream).connect(node);
  return () => {
    const { port1, port2 } = new MessageChannel();
    node.port.postMessage(port2, [port2]);
    return port1;
  };
}

/** A call, another app or a locked screen suspends a context: it is asked to go on, then and when the page is seen. */
function staysAwake(context: AudioContext): () => void {
  const wake = () => {
    if (context.state !== 'running' && context.state !== 'closed')
      void context.resume().catch(() => undefined);
  };
  const ending = new AbortController();
  const { signal } = ending;
  context.addEventListener('statechange', wake, { signal });
  document.addEventListener('visibilitychange', wake, { signal });
  document.addEventListener('resume', wake, { signal });
  window.addEventListener('pageshow', wake, { signal });
  window.addEventListener('click', wake, { signal, capture: true });
  wake();
  return () => ending.abort();
}
