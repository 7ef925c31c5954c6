using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace StudioKit.Web.Engine;

/// <summary>What the worker's script calls.</summary>
[SupportedOSPlatform("browser")]
internal static partial class EngineDoor
{
    private static readonly EngineRoom Room = new(new ReportedSteps(), new BrowserPicture());

    /// <summary>Answers a question.</summary>
    /// <param name="kind">Kind of the question.</param>
    /// <param name="request">What is asked, as JSON.</param>
    /// <returns>The answer, as JSON.</returns>
    [JSExport]
    internal static string Answer(string kind, string request) => Room.Answer(kind, request);

    /// <summary>Hands over a file that was made of the last kit.</summary>
    /// <param name="name">Its name.</param>
    [JSExport]
    internal static byte[] Take(string name) => Room.Take(name);

    [JSImport("report", "engine")]
    private static partial void Report(string step);

    private sealed class ReportedSteps : IProgress<string>
    {
        public void Report(string value) => EngineDoor.Report(value);
    }
}
