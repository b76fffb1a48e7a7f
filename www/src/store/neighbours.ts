// Other windows with this page: they are told which jobs have changed, and read for themselves what has.

export class Neighbours {
  private readonly channel: BroadcastChannel | undefined;

  constructor(name: string, heard: (jobs: readonly string[]) => void) {
    try {
      this.channel = new BroadcastChannel(name);
    } catch {
      // Where storage is refused, so are neighbours.
      return;
    }
    this.channel.onmessage = ({ data }: MessageEvent<unknown>) => {
      if (Array.isArray(data)) heard(data.filter((id) => typeof id === "string"));
    };
  }

  tell(jobs: readonly string[]): void {
    this.channel?.postMessage(jobs);
  }

  close(): void {
    this.channel?.close();
  }
}
