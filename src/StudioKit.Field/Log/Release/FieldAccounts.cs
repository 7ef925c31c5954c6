namespace StudioKit.Field.Log.Release;

/// <summary>Gathers what of a subject was made coarser and what was withheld, as Darwin Core asks to be told of both.</summary>
internal sealed class FieldAccounts
{
    // Few terms there are; in the order in which they are met.
    private readonly List<string> _coarsened = [];
    private readonly List<string> _withheld = [];
    private bool _hasCell;

    /// <summary>Takes in what became of fields.</summary>
    public void Add(IReadOnlyList<ReleasedField> fields)
    {
        foreach (var field in fields)
        {
            _hasCell |= field.Reason == FieldReason.Cell;
            if (field.Fate == FieldFate.Withheld)
            {
                Note(_withheld, field.Term);
            }
            else if (field.Fate == FieldFate.Coarsened && field.Reason != FieldReason.Cell)
            {
                Note(_coarsened, field.Term);
            }
        }
    }

    /// <summary>What was made coarser; empty where nothing was.</summary>
    /// <param name="cell">The cell that the place is told by; none where it is not.</param>
    public string Generalised(PlaceCell? cell)
    {
        var place = cell is not null && _hasCell ? $"place told as the middle of a cell of {RecordText.Of(cell.Step)} degree" : "";
        return string.Join("; ", new[] { place, _coarsened.Count > 0 ? "coarser: " + string.Join(", ", _coarsened) : "" }.Where(part => part.Length > 0));
    }

    /// <summary>What there is that was not told; empty where all was.</summary>
    public string Withheld() => _withheld.Count > 0 ? $"withheld: {string.Join(", ", _withheld)}; ask the recorder" : "";

    private static void Note(List<string> terms, string term)
    {
        if (!terms.Contains(term))
        {
            terms.Add(term);
        }
    }
}
