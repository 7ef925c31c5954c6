namespace StudioKit.Web.Results;

/// <summary>A starting exposure as its card says it.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
/// <param name="With">What the lens is mounted with; empty for the lens alone.</param>
/// <param name="Aperture">f-number to set.</param>
/// <param name="Shutter">Shutter speed to set.</param>
/// <param name="Iso">ISO speed to set.</param>
/// <param name="Lights">The flashes.</param>
/// <param name="Standing">Whether it holds.</param>
/// <param name="Verdict">The same in words, with the chance of a first frame that is right.</param>
/// <param name="Missed">What it misses; empty where it works.</param>
/// <param name="Margin">White margin from darkest to brightest; empty where nothing is to be white.</param>
/// <param name="LongestMm">Longest animal that the frame shows whole, in millimetres.</param>
/// <param name="Subjects">The kit's animals that it shows whole.</param>
/// <param name="WorkingDistance">Front glass to subject.</param>
/// <param name="Steps">What to try with a test object before the animal comes, in order.</param>
public sealed record CardFace(
    string SetUp, string Framing, string With, string Aperture, string Shutter, string Iso, IReadOnlyList<CardLight> Lights,
    Standing Standing, string Verdict, string Missed, string Margin, double LongestMm, IReadOnlyList<string> Subjects, string WorkingDistance, IReadOnlyList<string> Steps);
