using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>Writes to a standard stream that may be full, closed or gone: what is lost is remembered, and nothing is thrown.</summary>
internal sealed class GuardedWriter(TextWriter inner) : TextWriter
{
    private readonly Lock _turn = new();

    public override Encoding Encoding => inner.Encoding;

    /// <summary>Why something could not be written; none where all was, or where the reader had had enough.</summary>
    public Exception? Trouble { get; private set; }

    public override void Write(char value) => Try(() => inner.Write(value));

    public override void Write(string? value) => Try(() => inner.Write(value));

    public override void Write(char[] buffer, int index, int count) => Try(() => inner.Write(buffer, index, count));

    public override void Flush() => Try(inner.Flush);

    private void Try(Action write)
    {
        lock (_turn)
        {
            if (Trouble is not null)
            {
                return;
            }

            try
            {
                write();
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException or ObjectDisposedException)
            {
                Trouble = error;
            }
        }
    }
}
