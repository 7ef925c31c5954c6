namespace StudioKit.Writing.Tests;

/// <summary>Short ways to write text with a batch.</summary>
internal static class Batches
{
    public static FileBatchRequest Request(params IEnumerable<string> paths) => new() { Targets = [.. paths.Select(path => new FileTarget(path))] };

    public static void Write(string path, string text, bool force = false, params IReadOnlyList<string> inputs)
    {
        using var batch = FileBatch.Open(Request(path) with { Force = force, Inputs = inputs });
        batch.Write(path, System.Text.Encoding.UTF8.GetBytes(text));
        batch.Commit();
    }

    /// <summary>What a run is told that may not write.</summary>
    public static string Refusal(string path, bool force = false, params IReadOnlyList<string> inputs) =>
        FluentActions.Invoking(() => Write(path, "new", force, inputs)).Should().Throw<FileWritingException>().Which.Message;
}
