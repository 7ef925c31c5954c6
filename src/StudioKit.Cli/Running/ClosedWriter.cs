using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>Stands in for a standard stream that the caller closed.</summary>
internal sealed class ClosedWriter : TextWriter
{
    public override Encoding Encoding => Encoding.UTF8;

    public override void Write(char value) => throw new IOException("it is closed");
}
