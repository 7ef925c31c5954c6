namespace StudioKit.Web.Results;

/// <summary>Two states of a kit side by side.</summary>
/// <param name="Verdicts">The verdict on each.</param>
/// <param name="Measures">The figures that a change is judged by.</param>
/// <param name="Mass">How the carried mass differs, in words; empty where either cannot be planned.</param>
/// <param name="Differences">Whatever else differs; what is the same is left out.</param>
public sealed record CompareAnswer(StatePair Verdicts, IReadOnlyList<StatePair> Measures, string Mass, IReadOnlyList<StatePair> Differences);
