namespace StudioKit.Field.Log.Matching;

/// <summary>In which framing and set-up of the kit a picture was taken.</summary>
/// <param name="Kind">How the framing is known, or why it is not.</param>
/// <param name="Framing">Name of the framing; empty where it is not known.</param>
/// <param name="SetUp">Name of the set-up; empty where it is not known.</param>
/// <param name="Candidates">Framings that are possible where several are.</param>
public sealed record FramingMatch(FramingMatchKind Kind, string Framing, string SetUp, IReadOnlyList<string> Candidates)
{
    /// <summary>Not asked for.</summary>
    public static FramingMatch NotAsked { get; } = new(FramingMatchKind.NotAsked, "", "", []);
}
