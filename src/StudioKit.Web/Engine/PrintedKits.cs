using System.Globalization;
using System.IO.Compression;
using System.Text;
using StudioKit.Planning;
using StudioKit.Sheets;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Makes the sheets of kits, group by group; what was made of the last kit waits here for the page to take it.</summary>
/// <param name="plans">Where plans come from.</param>
internal sealed class PrintedKits(PlannedKits plans)
{
    // A day before which no zip file can be dated; sheets carry the date given and never a clock's.
    private static readonly DateTimeOffset Undated = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly Dictionary<string, (string Group, byte[] Content)> _made = new(StringComparer.Ordinal);
    private SheetsRequest? _madeFor;
    private (string Name, byte[] Content) _zip = ("", []);

    /// <summary>What can be made.</summary>
    public SheetOffers Offers(SheetsRequest request) => Planned(request) is { } plan
        ? new SheetOffers([.. SheetSet.Groups(plan, Options(request)).OrderBy(SheetTelling.Rank).Select(SheetTelling.Of)], SheetTelling.CutNote(plan))
        : new SheetOffers([], "");

    /// <summary>Makes one group; what was made of the same kit before stays beside it.</summary>
    /// <exception cref="ArgumentException">The kit has no such group.</exception>
    public MadeFiles Make(SheetsRequest request)
    {
        var files = Group(request).Write();
        KeepOnlyWhatIsMadeLike(request);
        foreach (var file in files)
        {
            _made[file.Name] = (request.Group, file.Content.ToArray());
        }

        return new MadeFiles([.. files.Select(file => new MadeFile(file.Name, file.Content.Length, file.Problems))]);
    }

    /// <summary>Binds what was made of a kit, all of it or one group, into one zip file, which can then be taken by its name.</summary>
    public MadeFiles Zip(SheetsRequest request)
    {
        KeepOnlyWhatIsMadeLike(request);
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, made) in _made.Where(file => request.Group is "" || file.Value.Group == request.Group).OrderBy(file => file.Key, StringComparer.Ordinal))
            {
                var entry = zip.CreateEntry(name, CompressionLevel.Fastest);
                entry.LastWriteTime = DateOf(request) is { } date ? new DateTimeOffset(date, TimeOnly.MinValue, TimeSpan.Zero) : Undated;
                using var file = entry.Open();
                file.Write(made.Content);
            }
        }

        var zipName = request.Group is "" ? "sheets.zip" : $"{request.Group}.zip";
        _zip = (zipName, stream.ToArray());
        return new MadeFiles([new MadeFile(zipName, _zip.Content.Length, [])]);
    }

    /// <summary>Hands over a file that was made.</summary>
    /// <exception cref="ArgumentException">No such file was made.</exception>
    public byte[] Take(string name) => name == _zip.Name ? _zip.Content : _made.TryGetValue(name, out var made) ? made.Content : throw new ArgumentException($"No file '{name}' was made.", nameof(name));

    /// <summary>The pages of one group to look at.</summary>
    /// <exception cref="ArgumentException">The kit has no such group.</exception>
    public SheetPages Pages(SheetsRequest request) => new([.. Group(request).Pages().Select(page => Encoding.UTF8.GetString(page.Content.Span))]);

    /// <summary>Forgets what was made, as plans are made otherwise from now on.</summary>
    public void Forget()
    {
        _made.Clear();
        _madeFor = null;
    }

    private void KeepOnlyWhatIsMadeLike(SheetsRequest request)
    {
        if (_madeFor != request with { Group = "" })
        {
            _made.Clear();
            _madeFor = request with { Group = "" };
        }
    }

    private SheetGroup Group(SheetsRequest request)
    {
        var plan = Planned(request) ?? throw new ArgumentException("The kit cannot be read.", nameof(request));
        return SheetSet.Groups(plan, Options(request)).FirstOrDefault(group => group.Name == request.Group)
            ?? throw new ArgumentException($"The kit has no sheets '{request.Group}'.", nameof(request));
    }

    private Plan? Planned(SheetsRequest request) => plans.Of(request.Text, request.FileName).Plan;

    private static SheetOptions Options(SheetsRequest request) => new()
    {
        Paper = request.Letter ? Paper.Letter : Paper.A4,
        Units = request.Inches ? TextUnits.Both : TextUnits.Metric,
        Date = DateOf(request),
    };

    private static DateOnly? DateOf(SheetsRequest request) =>
        DateOnly.TryParseExact(request.Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;
}
