namespace StudioKit.Writing;

/// <summary>Says which targets of a run must not be written.</summary>
internal sealed class TargetCheck(FileBatchRequest request)
{
    private const int MostNamed = 5;
    private readonly HashSet<FileIdentity> _inputs = [.. request.Inputs.Select(FilePlace.At).Where(place => place.Kind != FileKind.Nothing).Select(place => place.Identity)];
    private readonly Dictionary<string, WrittenList> _lists = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Refusal> _refused = new(StringComparer.Ordinal);

    /// <summary>The full name of a target.</summary>
    /// <exception cref="FileWritingException">It is no name for a file.</exception>
    public static string FullName(FileTarget target)
    {
        if (target.Path.Length == 0)
        {
            throw new FileWritingException("the name of a file to write is empty; give one, e.g. out/plan.pdf.");
        }

        if (target.Path.Contains('\0', StringComparison.Ordinal) || Path.GetFileName(target.Path) is "" or "." or "..")
        {
            throw new FileWritingException($"'{target.Path}' does not name a file; give one, e.g. out/plan.pdf.");
        }

        return Path.GetFullPath(target.Path);
    }

    /// <summary>Refuses the run where one of its targets must not be written.</summary>
    /// <exception cref="FileWritingException">Which targets, and why.</exception>
    public void Refuse(IReadOnlyList<NamedTarget> targets) => RefuseFor([.. targets.Select(target => GuardedRefusalOf(target.Target.Path, target.Full)).OfType<Refusal>()]);

    /// <summary>Whether a target may be written; one that must not be is remembered for <see cref="RefuseAdded"/>.</summary>
    public bool Admits(NamedTarget target)
    {
        if (GuardedRefusalOf(target.Target.Path, target.Full) is not { } refusal)
        {
            return true;
        }

        _refused[target.Target.Path] = refusal;
        return false;
    }

    /// <summary>Refuses the run where a target was not admitted.</summary>
    /// <exception cref="FileWritingException">Which targets, by name, and why.</exception>
    public void RefuseAdded() => RefuseFor([.. _refused.Values]);

    private void RefuseFor(List<Refusal> refusals)
    {
        if (refusals.Count == 0)
        {
            return;
        }

        var more = refusals.Count > MostNamed ? [$"and {refusals.Count - MostNamed} more"] : Array.Empty<string>();
        var remedy = request.CanBeForced && refusals.TrueForAll(refusal => refusal.IsLiftedByForce)
            ? "Use --force to replace it, or name another place."
            : "Name another place, or move it away yourself.";
        throw new FileWritingException($"{string.Join(";\n", refusals.Select(refusal => refusal.Sentence).Take(MostNamed).Concat(more))}; nothing was written. {remedy}");
    }

    /// <summary>Whether nothing stands in the way of writing a file.</summary>
    public bool Allows(FileTarget target) => GuardedRefusalOf(target.Path, FullName(target)) is null;

    private Refusal? GuardedRefusalOf(string shown, string full)
    {
        try
        {
            return RefusalOf(shown, full);
        }
        catch (Exception error) when (WritingFault.IsOfFiles(error))
        {
            return new Refusal($"{shown} is there and cannot be read: {WritingFault.Reason(error)}");
        }
    }

    private Refusal? RefusalOf(string shown, string full)
    {
        var (name, place, isLink) = (Path.GetFileName(full), FilePlace.At(full), FilePlace.IsLink(full));
        if (StagingFolder.IsReserved(name) || name.Equals(WrittenList.FileName, StringComparison.OrdinalIgnoreCase))
        {
            return new Refusal($"{shown} is a name that StudioKit keeps for itself");
        }

        // Read even where nothing is to be replaced: what is written needs a place on it.
        var list = ListOf(Path.GetDirectoryName(full)!);
        return place.Kind switch
        {
            FileKind.Nothing => isLink ? UnlessForced($"{shown} is a link that leads nowhere") : null,
            FileKind.Folder => new Refusal($"{shown} is a folder"),
            FileKind.Other => new Refusal($"{shown} is a device or a pipe, not a file"),
            _ when _inputs.Contains(place.Identity) => new Refusal($"{shown} is one of the files that this command reads, and those are never replaced"),
            _ when !isLink && list.Holds(name, ContentHash.Of(full)) => null,
            _ => RefusalOfForeign(shown, full),
        };
    }

    private Refusal? RefusalOfForeign(string shown, string full)
    {
        var kind = OriginalFile.IsSidecar(full) ? "a sidecar" : OriginalFile.IsPicture(full) ? "a picture" : null;
        return kind is null
            ? UnlessForced($"{shown} was not written by StudioKit, or was changed since")
            : new Refusal($"{shown} is {kind} that StudioKit did not write, or that was changed since, and those are never replaced");
    }

    private Refusal? UnlessForced(string sentence) => request.Force ? null : new Refusal(sentence, IsLiftedByForce: true);

    private WrittenList ListOf(string folder)
    {
        if (!_lists.TryGetValue(folder, out var list))
        {
            _lists[folder] = list = WrittenList.Read(folder);
        }

        return list;
    }

    private sealed record Refusal(string Sentence, bool IsLiftedByForce = false);
}
