using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Tests.Editing;

/// <summary>What holds for every change of every kit: on the demo kits, on the starter with all its blocks, on kits drawn from the schema, with either kind of line end.</summary>
public sealed class RandomEditTests
{
    private static readonly string[] Sound = [.. Directory.GetFiles(KitFolder.Path, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText), StarterKit.Text, StarterBlocks.AllInUse];

    private static readonly Gen<string> AnyText =
        from text in Gen.Frequency((2, Gen.Int[0, Sound.Length - 1].Select(at => Sound[at])), (1, SchemaDocuments.Any))
        from isWindows in Gen.Bool
        from isEnded in Gen.Bool
        select (isEnded ? text : text.TrimEnd()).ReplaceLineEndings(isWindows ? "\r\n" : "\n");

    private static readonly Gen<(string Text, int Seed)> AnyEdit = Gen.Select(AnyText, Gen.Int);

    [Fact]
    public void An_edited_kit_reads_as_the_same_kit_changed_as_an_object_and_written_anew() => AnyEdit.Sample(
        drawn =>
        {
            var edit = RandomEdit.Of(KitText.Of(drawn.Text), new Random(drawn.Seed));
            var (one, other) = (Read(edit.Result.After.Text), Read(edit.Expected()));

            return edit.Result.IsDone && Equals(one.Kit, other.Kit) && Said(one).SequenceEqual(Said(other)) && one.Defaults == other.Defaults;
        },
        iter: RandomFiles.Runs, print: Told);

    [Fact]
    public void The_inverse_of_an_edit_gives_the_same_bytes_again() => AnyEdit.Sample(
        drawn =>
        {
            var result = RandomEdit.Of(KitText.Of(drawn.Text), new Random(drawn.Seed)).Result;

            return result.Edit.ApplyTo(drawn.Text) == result.After.Text && result.After.With(result.Inverse).Text == drawn.Text;
        },
        iter: RandomFiles.Runs, print: Told);

    [Fact]
    public void A_changed_value_alters_its_own_lines_alone() => AnyEdit.Sample(
        drawn =>
        {
            var text = KitText.Of(drawn.Text);
            var edit = RandomEdit.Of(text, new Random(drawn.Seed));
            if (edit.Kind == "set" && !edit.Result.Edit.IsNone)
            {
                var written = text.Find(edit.Path)!;
                return IsBare(drawn.Text, edit.Result.Edit.Start, written.Start) && IsBare(drawn.Text, written.Start + written.Length, edit.Result.Edit.Start + edit.Result.Edit.Length);
            }

            return edit.Kind is not ("add" or "insert") || edit.Result.Edit.Length == 0 || IsOpened(drawn.Text, edit.Result.Edit);
        },
        iter: RandomFiles.Runs, print: Told);

    [Fact]
    public void Line_ends_stay_of_one_kind() => AnyEdit.Sample(
        drawn =>
        {
            var after = RandomEdit.Of(KitText.Of(drawn.Text), new Random(drawn.Seed)).Result.After.Text;

            return drawn.Text.Contains('\r', StringComparison.Ordinal) ? after.Split("\r\n").All(line => line.AsSpan().IndexOfAny('\r', '\n') < 0) : !after.Contains('\r', StringComparison.Ordinal);
        },
        iter: RandomFiles.Runs, print: Told);

    [Fact]
    public void A_hundred_edits_keep_every_comment_and_can_all_be_taken_back() => AnyEdit.Sample(
        drawn =>
        {
            var random = new Random(drawn.Seed);
            var text = KitText.Of(drawn.Text);
            var comments = OtherWay.Comments(drawn.Text);
            var inverses = new Stack<TextEdit>();
            for (var i = 0; i < 100 && new OtherWay(text.Text).All().Any(); i++)
            {
                var result = RandomEdit.Of(text, random).Result;
                inverses.Push(result.Inverse);
                text = result.After;
            }

            return OtherWay.Comments(text.Text).SequenceEqual(comments) && inverses.Aggregate(text, (now, inverse) => now.With(inverse)).Text == drawn.Text;
        },
        iter: Math.Max(3, RandomFiles.Runs / 20), print: Told);

    /// <summary>A spoilt text: every change is refused or comes to a text that reads no worse, and what was not asked for stays.</summary>
    [Fact]
    public void A_spoilt_kit_is_changed_as_asked_or_not_at_all() => Gen.Select(Gen.Int[0, Sound.Length - 1].SelectMany(at => HostileText.Of(Sound[at])), Gen.Int).Sample(
        drawn =>
        {
            var (text, random) = (KitText.Of(drawn.Item1), new Random(drawn.Item2));
            var paths = new[] { "kit", "panel.width", "lenses[0].magnifications[0]", "flashes[1].name", "set-ups[0].lights[0].distance", "stock.sheets[1]", "pack.items[3].mass", "subjects", "frame.pipe.wall" };
            var path = paths[random.Next(paths.Length)];
            KitEditResult[] results =
            [
                text.Set(path, "1 m"), text.Set(path, KitValue.SectionOf(("name", "x"))), text.Remove(path), text.Remove(path, withComments: true),
                text.Insert(path, 1, KitValue.Of("x")), text.Insert(path, 0, KitValue.SectionOf(("name", "x"))), text.Move(path, 1),
            ];
            var before = Read(drawn.Item1).Diagnostics.Count(IsOfYaml);
            return results.All(result => result.After.With(result.Inverse).Text == drawn.Item1 && (result.IsDone ? Read(result.After.Text).Diagnostics.Count(IsOfYaml) <= before : result.After == text));
        },
        iter: RandomFiles.Runs);

    private static bool IsOfYaml(Diagnostic fault) => fault.Code is DiagnosticCodes.Syntax or DiagnosticCodes.TooMuch or DiagnosticCodes.NotText or DiagnosticCodes.RefusedFeature or DiagnosticCodes.DuplicateKey;

    // A block begins below its key, and a comment may follow its last value: between them stand blanks and comments at most.
    private static bool IsBare(string text, int start, int end) => start >= end || text[start..end].Split('\n').All(line => line.Trim() is "" or ['#', ..]);

    // A name of a part gives way to a section with that part, and [] to lines below.
    private static bool IsOpened(string text, TextEdit edit) => edit.NewText.Contains(text.Substring(edit.Start, edit.Length).Trim('[', ']', ' ', '"'), StringComparison.Ordinal);

    private static KitReadResult Read(string text) => KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded);

    // What is said of a kit, wherever it stands; lines that a sentence names are another matter.
    private static IEnumerable<string> Said(KitReadResult read) => read.Diagnostics
        .Select(fault => fault.Code + (fault.Hint?.Contains("on line", StringComparison.Ordinal) == true ? "" : fault.Message)).Order(StringComparer.Ordinal);

    private static string Told((string Text, int Seed) drawn)
    {
        var edit = RandomEdit.Of(KitText.Of(drawn.Text), new Random(drawn.Seed));
        return $"{edit.Kind} {edit.Path}: {edit.Result.Refusal} {edit.Result.Edit}\n{drawn.Text}\n=====\n{edit.Result.After.Text}\n=====\n{edit.Expected()}";
    }
}
