using StudioKit.Physics;

namespace StudioKit.Field.Log;

/// <summary>A record of a log as people speak of it.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="Id">Full identifier.</param>
/// <param name="ShortId">Short identifier.</param>
/// <param name="Names">Names that it goes by; empty where it has none.</param>
/// <param name="About">What tells it from others of its name, in a few words.</param>
public sealed record LogEntry(LogRecordKind Kind, string Id, string ShortId, ValueList<string> Names, string About)
{
    /// <summary>Short identifier, name and what tells it from others.</summary>
    public override string ToString() => string.Join(' ', new[] { ShortId, Names.Count > 0 ? Names[0] : "", About.Length > 0 ? $"({About})" : "" }.Where(part => part.Length > 0));

    /// <summary>Whether it goes by a name, capitals or not.</summary>
    /// <param name="name">The name.</param>
    internal bool IsNamed(string name) => Names.Any(own => string.Equals(own, name, StringComparison.OrdinalIgnoreCase));
}
