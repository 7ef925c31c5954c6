namespace StudioKit.Web.Results;

/// <summary>Asks for designs that no other beats. A search takes many steps, so that other questions come in between.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name.</param>
/// <param name="Measures">What to compare by: two to four, or one alone where the single best is asked for.</param>
/// <param name="Limits">How far measures may go, each as it was typed.</param>
/// <param name="Most">Designs to try at most.</param>
/// <param name="Step">Which step, from 0.</param>
public sealed record SearchRequest(string Text, string FileName, IReadOnlyList<string> Measures, IReadOnlyList<FormValue> Limits, int Most, int Step)
{
    /// <summary>Whether this is the last step, whatever is left to try.</summary>
    public bool IsLast { get; init; }
}
