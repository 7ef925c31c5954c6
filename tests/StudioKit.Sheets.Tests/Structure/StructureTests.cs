using System.Collections.Concurrent;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;
using UglyToad.PdfPig.Tokens;

namespace StudioKit.Sheets.Tests.Structure;

/// <summary>What a screen reader finds in every printed document of every demo kit, read back with a reader that is not ours.</summary>
/// <remarks>The demands are those of ISO 32000-1, 14.6 to 14.8, and of ISO 14289-1, 7.1 to 7.18, as far as they can be read off a file.</remarks>
public sealed class StructureTests
{
    private static readonly string[] Known = ["Document", "P", "L", "LI", "Lbl", "LBody", "Table", "TR", "TH", "TD", "Span", "Figure", "Caption", "TOC", "TOCI", "Link", "H1", "H2", "H3", "H4", "H5", "H6"];

    private static readonly ConcurrentDictionary<string, Lazy<StructureTree>> Trees = new(StringComparer.Ordinal);

    public static TheoryData<string> Kits => DemoBooks.Kits;

    [Theory]
    [MemberData(nameof(Kits))]
    public void Every_piece_of_content_is_in_the_tree_once_or_is_an_artefact(string kit)
    {
        var tree = Of(kit);

        var inTree = tree.Root.AllContent.ToList();
        inTree.Should().OnlyHaveUniqueItems();
        var onPages = new List<(int, int)>();
        foreach (var page in tree.Pages)
        {
            var (numbered, artefacts) = tree.Marked(page);
            onPages.AddRange(numbered.Select(marked => (page.Number, marked.MarkedContentIdentifier)));
            (numbered.Sum(marked => marked.Letters.Count) + artefacts.Sum(marked => marked.Letters.Count)).Should().Be(page.Letters.Count, $"page {page.Number} has no text outside");
            (numbered.Sum(marked => marked.Paths.Count) + artefacts.Sum(marked => marked.Paths.Count)).Should().Be(page.Paths.Count, $"page {page.Number} has no line outside");
        }

        onPages.Should().OnlyHaveUniqueItems().And.BeEquivalentTo(inTree);
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Each_page_leads_back_to_the_element_that_its_content_belongs_to(string kit)
    {
        var tree = Of(kit);
        var numbers = tree.Items(tree.Dictionary(tree.RootDictionary.Data["ParentTree"]).Data["Nums"]);
        var entries = numbers.Chunk(2).ToDictionary(pair => ((NumericToken)pair[0]).Int, pair => pair[1]);
        var owners = tree.All.SelectMany(node => node.Content.Select(place => (place, node.Dictionary))).ToDictionary(pair => pair.place, pair => pair.Dictionary);

        foreach (var page in tree.Pages)
        {
            var parents = tree.Items(entries[((NumericToken)page.Dictionary.Data["StructParents"]).Int]);
            for (var content = 0; content < parents.Count; content++)
            {
                tree.Dictionary(parents[content]).Should().BeSameAs(owners[(page.Number, content)]);
            }

            page.Dictionary.Data["Tabs"].ToString().Should().Be("/S");
        }

        numbers.Where((_, i) => i % 2 == 0).Cast<NumericToken>().Select(number => number.Int).Should().BeInAscendingOrder();
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Elements_stand_where_they_may_and_the_file_says_that_it_is_tagged(string kit)
    {
        var tree = Of(kit);

        tree.Root.Name.Should().Be("Document");
        tree.All.Select(node => node.Name).Should().BeSubsetOf(Known);
        foreach (var node in tree.All.Where(node => node.Parent is not null))
        {
            (node.Name switch
            {
                "LI" => node.Parent!.Name == "L",
                "Lbl" or "LBody" => node.Parent!.Name == "LI",
                "TR" => node.Parent!.Name == "Table",
                "TH" or "TD" => node.Parent!.Name == "TR",
                "TOCI" => node.Parent!.Name == "TOC",
                "Caption" => node.Parent!.Name == "Figure",
                _ => true,
            }).Should().BeTrue($"{node.Name} in {node.Parent!.Name}");
            tree.Dictionary(node.Dictionary.Data["P"]).Should().BeSameAs(node.Parent.Dictionary);
        }

        ((BooleanToken)tree.Dictionary(tree.Catalog.Data["MarkInfo"]).Data["Marked"]).Data.Should().BeTrue();
        tree.Text(tree.Catalog, "Lang").Should().Be("en");
        tree.Title.Should().NotBeNullOrEmpty();
        System.Text.Encoding.Latin1.GetString(DemoBooks.Book(kit).Content.Span).Should().NotContain("pdfuaid", "what no checker has proven is not claimed");
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Tables_have_a_head_with_a_scope_and_as_many_cells_in_every_row(string kit)
    {
        var tree = Of(kit);
        var tables = tree.All.Where(node => node.Name == "Table").ToList();

        tables.Should().HaveCountGreaterThan(5);
        foreach (var table in tables)
        {
            var rows = table.Children;
            rows[0].Children.Should().OnlyContain(cell => cell.Name == "TH" && tree.Text(tree.Dictionary(cell.Dictionary.Data["A"]), "Scope") == "Column");
            rows.Skip(1).Should().NotBeEmpty().And.OnlyContain(row => row.Children.Count == rows[0].Children.Count && row.Children.All(cell => cell.Name == "TD"));
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Figures_have_words_and_a_place_and_signs_that_are_drawn_have_words(string kit)
    {
        var tree = Of(kit);

        foreach (var figure in tree.All.Where(node => node.Name == "Figure"))
        {
            tree.Text(figure.Dictionary, "Alt").Should().MatchRegex(@"\S+ \S+");
            var box = tree.Items(tree.Dictionary(figure.Dictionary.Data["A"]).Data["BBox"]).Cast<NumericToken>().Select(number => number.Double).ToList();
            var page = tree.Pages[figure.Content[0].Page - 1];
            (box[0] >= -1 && box[1] >= -1 && box[2] <= page.Width + 1 && box[3] <= page.Height + 1 && box[0] <= box[2] && box[1] <= box[3]).Should().BeTrue($"{string.Join(' ', box)} on page {page.Number}");
        }

        foreach (var sign in tree.All.Where(node => node.Name is "Span" || (node.Name == "Lbl" && tree.Said(node).Length == 0)))
        {
            tree.Text(sign.Dictionary, "ActualText").Should().NotBeEmpty();
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Headings_begin_at_the_first_level_and_skip_none_on_the_way_down(string kit)
    {
        var tree = Of(kit);
        var levels = tree.All.Where(node => node.Name[0] == 'H').Select(node => node.Name[1] - '0').Prepend(0).ToList();

        levels.Should().HaveCountGreaterThan(10);
        levels.Zip(levels.Skip(1)).Should().OnlyContain(pair => pair.Second <= pair.First + 1);
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void What_is_read_later_stands_on_the_same_page_or_a_later_one_and_is_drawn_later(string kit)
    {
        var tree = Of(kit);
        var elements = tree.Root.Children.Select(node => node.AllContent.ToList()).Where(content => content.Count > 0).ToList();

        elements.Select(content => content[0]).Should().BeInAscendingOrder();
        foreach (var content in elements)
        {
            content.Should().BeInAscendingOrder();
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Lines_of_the_contents_are_links_that_say_where_they_lead(string kit)
    {
        var tree = Of(kit);
        var lines = tree.All.Where(node => node.Name == "TOCI").ToList();

        lines.Should().HaveCountGreaterThan(5);
        foreach (var link in lines.Select(line => line.Children.Single()))
        {
            var annotation = link.Objects.Single();
            tree.Text(annotation, "Contents").Should().MatchRegex(@"^To page \d+$");
            tree.Said(link).Should().EndWith(tree.Text(annotation, "Contents")["To page ".Length..]);
        }
    }

    [Fact]
    public void A_paragraph_is_one_over_all_its_lines_and_pages()
    {
        var text = string.Join(' ', Enumerable.Range(0, 4000).Select(i => $"w{i}"));
        var tree = new StructureTree(PdfWriter.Write(Pages.Lay(new Heading("Ж"), new Paragraph(text), new Paragraph("After")).Document));

        tree.Root.Children.Select(node => node.Name).Should().Equal("H1", "P", "P");
        tree.Root.Children[1].Content.Select(place => place.Page).Should().HaveCountGreaterThan(2).And.OnlyHaveUniqueItems();
        tree.Said(tree.Root.Children[1]).Split(' ', StringSplitOptions.RemoveEmptyEntries).Should().HaveCountGreaterThan(3990, "the ends of lines are spaces");
    }

    [Fact]
    public void A_table_over_several_pages_is_one_and_its_head_is_read_once()
    {
        var table = new Table(
            [new Column("", ColumnKind.TickBox), new Column("Piece"), new Column("Length", ColumnKind.Right)],
            [.. Enumerable.Range(0, 120).Select(i => new TableRow(["tick", i % 7 == 0 ? "" : $"piece {i}", $"{i} mm"]))]);
        var tree = new StructureTree(PdfWriter.Write(Pages.Lay(table).Document));

        var read = tree.All.Where(node => node.Name == "Table").Should().ContainSingle().Subject;
        read.Children.Should().HaveCount(121).And.OnlyContain(row => row.Children.Count == 3);
        read.AllContent.Select(place => place.Page).Distinct().Should().HaveCountGreaterThan(1);
        tree.Pages.Skip(1).Should().OnlyContain(page => tree.Marked(page).Artefacts.Any(marked => string.Concat(marked.Letters.Select(letter => letter.Value)).Contains("Piece")));
    }

    [Fact]
    public void The_words_of_a_drawing_belong_to_its_figure_and_are_in_any_script()
    {
        var drawing = new Drawing("Рамка", "A frame, 40 mm wide", [Polygon.Rectangle(new Bounds(0, 0, 40, 40), Stroke.Edge, Fill.Hatch), new Label(new Point(5, 5), "inside"), Dimension.InMillimetres(new Point(0, 0), new Point(40, 0), -5)]);
        var tree = new StructureTree(PdfWriter.Write(Pages.Lay(new DrawingBlock(drawing)).Document));

        var figure = tree.Root.Children.Should().ContainSingle().Subject;
        tree.Text(figure.Dictionary, "Alt").Should().Be("Рамка. A frame, 40 mm wide");
        tree.Said(figure).Should().Contain("inside").And.Contain("40 mm");
        figure.Children.Single().Name.Should().Be("Caption");
    }

    private static StructureTree Of(string kit) => Trees.GetOrAdd(kit, name => new(() => new StructureTree(DemoBooks.Book(name).Content.ToArray()))).Value;
}
