using System.IO.Compression;
using StudioKit.FieldFiles.Tests.Metadata;
using UglyToad.PdfPig;

namespace StudioKit.Cli.Tests.Commands;

/// <summary>Somebody looks for the exact place of a sensitive subject in everything that leaves the house, byte by byte.</summary>
public sealed class ExactPlaceTests : IDisposable
{
    private const double Latitude = 52.61234;
    private const double Longitude = -21.54321;
    private const string Word = "Quillmere";

    // The caption, habitat, protocol, people and remarks name the place; so do file name, identifier of the picture and title of the data set.
    private static readonly PlaceTraces Traces = new(Latitude, Longitude, Word, TellingPicture.BodySerial, TellingPicture.LensSerial, TellingPicture.Owner, "14:05", "14:12:03");

    private readonly TemporaryFolder _folder = new();

    private string Log => _folder.File("field.log");

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("Hundredth")]
    [InlineData("Tenth")]
    [InlineData("Withheld")]
    public void Nothing_that_leaves_the_house_tells_the_exact_place(string sensitivity)
    {
        var photos = Record(sensitivity);
        Ok("log", "export", "--log", Log, "--archive", Out("fen.zip"), "--csv", Out("fen.csv"), "--geojson", Out("fen.geojson"), "--pictures", "https://example.org/",
            "--originals", _folder.File("originals"), "--copies", _folder.File("out/copies"));
        Ok(["scale", .. photos, "--log", Log, "--pixel-size", "5 um", "--out", _folder.File("out/scaled")]);
        Ok("log", "plates", "--log", Log, "--pictures", _folder.File("originals"), "--out", Out("plates.pdf"));

        var files = Directory.GetFiles(_folder.File("out"), "*", SearchOption.AllDirectories);
        files.Where(file => file.EndsWith(".jpg", StringComparison.Ordinal) || file.EndsWith(".png", StringComparison.Ordinal) || file.EndsWith(".tif", StringComparison.Ordinal))
            .Should().HaveCountGreaterThanOrEqualTo(6, "three clean copies and three scaled ones");

        // A scaled copy keeps its picture's name, so that the log finds it again, and the folder's list of what was written there has it, too.
        foreach (var file in files.Where(file => !file.EndsWith(Path.Combine("scaled", ".studiokit-written"), StringComparison.Ordinal)))
        {
            Contents(file).SelectMany(bytes => Traces.In(bytes)).Should().BeEmpty($"{file} leaves the house");
        }

        Directory.GetFiles(_folder.File("out/copies")).Should().OnlyContain(file => !file.Contains(Word));
    }

    [Fact]
    public void The_same_search_finds_the_place_of_a_subject_that_is_not_sensitive()
    {
        Record("Open");
        Ok("log", "export", "--log", Log, "--archive", Out("fen.zip"), "--originals", _folder.File("originals"), "--copies", _folder.File("out/copies"));

        Contents(_folder.File("out/fen.zip")).SelectMany(bytes => Traces.In(bytes)).Should().HaveCountGreaterThan(4);
        Directory.GetFiles(_folder.File("out/copies"), "*.jpg").SelectMany(Contents).SelectMany(bytes => Traces.In(bytes)).Should().HaveCountGreaterThan(4);
    }

    [Fact]
    public void An_original_of_a_sensitive_subject_that_carries_its_place_is_warned_of_when_it_is_logged()
    {
        Record("Tenth");

        CommandRun.Of("log", "frame", "last", _folder.File("originals/Quillmere-1.jpg"), "--log", Log).Error
            .Should().Contain("carries coordinates and serial numbers");
    }

    [Fact]
    public void A_copy_that_keeps_a_position_is_warned_of_and_one_that_is_cleaned_is_not()
    {
        var photo = Record("Open")[0];

        CommandRun.Of("scale", photo, "--pixel-size", "5 um", "--out", _folder.File("a")).Error.Should().Contain("carries coordinates").And.Contain("--clean");
        var run = CommandRun.Of("scale", photo, "--pixel-size", "5 um", "--out", _folder.File("b"), "--clean");

        run.Error.Should().NotContain("carries");
        Directory.GetFiles(_folder.File("b"), "Quillmere*").SelectMany(file => Traces.In(File.ReadAllBytes(file))).Should().BeEmpty();
    }

    /// <summary>The camera counts to 9999 and begins again, and one picture can show two animals: a name alone does not tell an open picture.</summary>
    [Fact]
    public void A_picture_that_an_open_session_has_too_is_cleaned_all_the_same()
    {
        var photos = Record("Tenth");
        Ok("log", "session", "--log", Log, "--start", "2026-06-01", "--name", "heath");
        Ok("log", "subject", "last", "--log", Log, "--name", "Carabus");
        Ok(["log", "frame", "last", .. photos, "--log", Log]);

        Ok("log", "export", "--log", Log, "--archive", Out("fen.zip"), "--originals", _folder.File("originals"), "--copies", _folder.File("out/copies"));

        var copies = Directory.GetFiles(_folder.File("out/copies"), "*.*").Where(file => !file.EndsWith(".studiokit-written", StringComparison.Ordinal)).ToList();
        copies.Should().HaveCount(6);
        copies.SelectMany(Contents).SelectMany(bytes => Traces.In(bytes)).Should().BeEmpty();
    }

    [Fact]
    public void Names_that_tell_the_place_are_pointed_out_where_they_cannot_be_taken_away()
    {
        var photo = Record("Tenth")[0];

        CommandRun.Of("log", "export", "--log", Log, "--preview").Error.Should().Contain("3 pictures' file names hold a word of its place, Quillmere-1.jpg first");
        CommandRun.Of("scale", photo, "--log", Log, "--pixel-size", "5 um", "--out", _folder.File("a")).Error.Should().Contain("its name holds a word of its sensitive place");
        CommandRun.Of("log", "plates", "--log", Log, "--pictures", _folder.File("originals"), "--out", Out("plates.pdf"), "--title", "Spiders of Quillmere").Error
            .Should().Contain("a word of it stands in what is said of the data set (title: Quillmere)");
    }

    /// <summary>A raw file and the JPEG taken with it bear one number; the log knows one of them.</summary>
    [Fact]
    public void The_copy_of_a_picture_is_cleaned_whichever_of_its_files_is_logged()
    {
        Record("Tenth");
        new TellingPicture(Latitude, Longitude, Word, bigEndian: false).Save(_folder.File("originals/Quillmere-2.tif"));

        Ok("scale", _folder.File("originals/Quillmere-2.tif"), "--log", Log, "--pixel-size", "5 um", "--out", _folder.File("a"));

        Traces.In(File.ReadAllBytes(_folder.File("a/Quillmere-2.tif"))).Should().BeEmpty();
    }

    private List<string> Record(string sensitivity)
    {
        Directory.CreateDirectory(_folder.File("originals"));
        var photos = new[] { "Quillmere-1.jpg", "Quillmere-2.png", "Quillmere-3.tif" }.Select(name => _folder.File("originals/" + name)).ToList();
        photos.ForEach(photo => new TellingPicture(Latitude, Longitude, Word, bigEndian: photo.EndsWith("jpg", StringComparison.Ordinal)).Save(photo));
        Ok("log", "session", "--log", Log, "--start", "2026-05-09T14:05:00+01:00", "--name", Word + " evening", "--locality", Word, "--latitude", "52.61234", "--longitude", "-21.54321",
            "--uncertainty-m", "30", "--elevation-m", "47", "--habitat", Word + " sluice", "--protocol", "beside " + Word, "--remarks", "52°36'44\" N, " + Word, "--recorded-by", Word + " moth group");
        Ok("log", "subject", "last", "--log", Log, "--name", "Dolomedes", "--vernacular", Word + " raft spider", "--sensitivity", sensitivity, "--behaviour", "on the sluice of " + Word, "--remarks", "52.61234, -21.54321");
        Ok(["log", "frame", "last", .. photos, "--log", Log, "--pixel-size", "5 um", "--caption", "at " + Word, "--creator", "A. Sedge"]);
        Ok("log", "measure", "last", "found at", "52.61234", "--log", Log, "--method", Word);
        return photos;
    }

    private string Out(string name)
    {
        Directory.CreateDirectory(_folder.File("out"));
        return _folder.File("out/" + name);
    }

    // A file's own bytes, and unpacked everything inside a zip file and all text and pictures of a PDF.
    private static IEnumerable<byte[]> Contents(string file)
    {
        yield return File.ReadAllBytes(file);
        if (file.EndsWith(".pdf", StringComparison.Ordinal))
        {
            using var document = PdfDocument.Open(File.ReadAllBytes(file));
            foreach (var page in document.GetPages())
            {
                yield return System.Text.Encoding.UTF8.GetBytes(page.Text);
                foreach (var image in page.GetImages())
                {
                    yield return image.RawBytes.ToArray();
                }
            }
        }

        if (!file.EndsWith(".zip", StringComparison.Ordinal))
        {
            yield break;
        }

        using var zip = ZipFile.OpenRead(file);
        foreach (var entry in zip.Entries)
        {
            using var unpacked = new MemoryStream();
            using var stream = entry.Open();
            stream.CopyTo(unpacked);
            yield return [.. System.Text.Encoding.UTF8.GetBytes(entry.FullName), .. unpacked.ToArray()];
        }
    }

    private static void Ok(params string[] args)
    {
        var run = CommandRun.Of(args);
        run.ExitCode.Should().Be(0, string.Join(' ', args) + "\n" + run.Error);
    }
}
