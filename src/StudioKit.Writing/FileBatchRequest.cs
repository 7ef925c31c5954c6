namespace StudioKit.Writing;

/// <summary>Everything that a run is going to write, and what it reads.</summary>
public sealed record FileBatchRequest
{
    /// <summary>Files to write, each once.</summary>
    public required IReadOnlyList<FileTarget> Targets { get; init; }

    /// <summary>Files that the run reads: kits, tables, originals, logs. None of them is ever replaced, under whatever name it is met.</summary>
    public IReadOnlyList<string> Inputs { get; init; } = [];

    /// <summary>Whether files that StudioKit did not write, or that were changed since, may be replaced: never an input, a picture or a sidecar.</summary>
    public bool Force { get; init; }

    /// <summary>Whether the command takes <c>--force</c> at all, so that it may be named as a way out.</summary>
    public bool CanBeForced { get; init; } = true;
}
