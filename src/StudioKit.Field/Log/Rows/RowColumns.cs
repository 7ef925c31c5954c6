namespace StudioKit.Field.Log.Rows;

/// <summary>The columns of a log written in rows, one row an animal or a run of its pictures.</summary>
public static class RowColumns
{
    internal const string Date = "date";
    internal const string Place = "place";
    internal const string Time = "time";
    internal const string Animal = "animal";
    internal const string Scientific = "scientific";
    internal const string Doubt = "doubt";
    internal const string Count = "count";
    internal const string Sex = "sex";
    internal const string Stage = "stage";
    internal const string Framing = "framing";
    internal const string SetUp = "set-up";
    internal const string Frames = "frames";
    internal const string Held = "held";
    internal const string Released = "released";
    internal const string Limit = "limit";
    internal const string Size = "size";
    internal const string Sensitive = "sensitive";
    internal const string Remarks = "remarks";

    /// <summary>All columns, in the order in which they are written.</summary>
    public static IReadOnlyList<string> All { get; } =
        [Date, Place, Time, Animal, Scientific, Doubt, Count, Sex, Stage, Framing, SetUp, Frames, Held, Released, Limit, Size, Sensitive, Remarks];

    /// <summary>The boxes of the printed sheet, in its order: what rows without a head are read by.</summary>
    public static IReadOnlyList<string> OnPaper { get; } = [Time, Animal, Count, Framing, SetUp, Frames, Held, Released, Size, Sensitive, Remarks];

    // What is said of an animal once, in the row that names it.
    internal static IReadOnlyList<string> OfTheAnimal { get; } = [Doubt, Count, Sex, Stage, Limit, Size, Sensitive];
}
