using System.Globalization;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Log.Rows;

/// <summary>The rows of one animal: the first names it, each further one holds another run of its pictures.</summary>
internal static class SubjectRows
{
    public static FieldResult<List<Dictionary<string, string>>> Of(LogTree log, FieldSubject subject, RowClock clock, FrameNumbers numbers)
    {
        var rows = new List<(DateTimeOffset? Time, Dictionary<string, string> Cells)>();
        rows.AddRange(TimesSeen(log, subject).Select(moment => ((DateTimeOffset?)moment, new Dictionary<string, string>())));
        foreach (var run in Runs([.. log.Frames(subject)]))
        {
            if (numbers.Write([.. run.Select(frame => frame.FileName)]) is not { } cell)
            {
                return new FieldDiagnostic("FLD497", run[0].FileName, "The names of these pictures cannot be written in a row so that they are read again.", "Rename them without semicolons and outer blanks.");
            }

            rows.Add((run[0].Taken?.Moment, Run(run[0], cell)));
        }

        return Timed(rows.Count > 0 ? rows : [(null, [])], subject, log, clock);
    }

    // In the order in which the times will be read.
    private static List<Dictionary<string, string>> Timed(
        List<(DateTimeOffset? Time, Dictionary<string, string> Cells)> rows, FieldSubject subject, LogTree log, RowClock clock)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            rows[i].Cells[RowColumns.Time] = rows[i].Time is { } time ? clock.Write(time) : "";
            if (i == 0)
            {
                Name(rows[0].Cells, subject, log, clock);
            }
        }

        return [.. rows.Select(row => row.Cells)];
    }

    private static IEnumerable<DateTimeOffset> TimesSeen(LogTree log, FieldSubject subject) => log.Measurements(subject)
        .Where(measurement => measurement.Type == RowWriter.TimeSeen)
        .Select(measurement => Moment(measurement.Value)).OfType<DateTimeOffset>();

    private static List<List<FieldFrame>> Runs(List<FieldFrame> frames)
    {
        var runs = new List<List<FieldFrame>>();
        foreach (var frame in frames)
        {
            if (runs.Count > 0 && runs[^1][0] is var first && (first.Framing, first.SetUp, first.Taken?.Moment) == (frame.Framing, frame.SetUp, frame.Taken?.Moment))
            {
                runs[^1].Add(frame);
            }
            else
            {
                runs.Add([frame]);
            }
        }

        return runs;
    }

    private static Dictionary<string, string> Run(FieldFrame first, string cell) => new()
    {
        [RowColumns.Framing] = Carried(first.Framing),
        [RowColumns.SetUp] = Carried(first.SetUp),
        [RowColumns.Frames] = cell,
    };

    private static void Name(Dictionary<string, string> row, FieldSubject subject, LogTree log, RowClock clock)
    {
        var everyday = subject.VernacularName == RowWriter.Unknown ? "" : subject.VernacularName;
        row[RowColumns.Animal] = everyday.Length > 0 || subject.ScientificName.Length > 0 ? everyday : RowWriter.Unknown;
        row[RowColumns.Scientific] = subject.ScientificName;
        row[RowColumns.Doubt] = subject.IdentificationQualifier;
        row[RowColumns.Count] = subject.IndividualCount?.ToString(CultureInfo.InvariantCulture) ?? "";
        row[RowColumns.Sex] = SubjectCells.Sex(subject.Sex);
        row[RowColumns.Stage] = subject.LifeStage;
        row[RowColumns.Held] = subject.HoldStart is { } start ? clock.Write(start) : "";
        row[RowColumns.Released] = subject.HoldEnd is { } end ? (subject.Released == true ? "" : RowWriter.Kept) + clock.Write(end) : "";
        row[RowColumns.Limit] = Limit(subject.HoldLimit);
        row[RowColumns.Size] = log.Measurements(subject).FirstOrDefault(measurement => measurement is { Type: RowWriter.BodyLength, Unit: "mm" }) is { } size
            && SubjectCells.Millimetres(size.Value) is { } millimetres ? RecordText.Of(millimetres) : "";
        row[RowColumns.Sensitive] = subject.Sensitivity == PlaceSensitivity.Open ? "" : subject.Sensitivity.ToString().ToLowerInvariant();
        row[RowColumns.Remarks] = subject.Remarks;
    }

    private static string Carried(string name) => name.Length > 0 ? name : RowWriter.Nothing;

    private static string Limit(TimeSpan? limit) => limit switch
    {
        null => "",
        { Seconds: 0, Milliseconds: 0 } whole => string.Create(CultureInfo.InvariantCulture, $"{whole.TotalMinutes:0} min"),
        { } odd => string.Create(CultureInfo.InvariantCulture, $"{odd.TotalSeconds:0.###} s"),
    };

    private static DateTimeOffset? Moment(string text) => FieldDate.TryRead(text, _ => TimeSpan.Zero, out var date) ? date.Moment : null;
}
