namespace StudioKit.Field.Analysis;

/// <summary>Tells which even parts of a frame are the lit sheet: the one that reaches furthest round the frame's edge, and what is as bright and as plain as it nearby.</summary>
/// <remarks>A pale animal can be as even and nearly as bright as the sheet, but where the sheet is white it is not, or it has texture, or it is darker than the sheet beside it.</remarks>
internal sealed class SheetParts
{
    private const double SeedStops = 0.5;

    // Light on a sheet does not change by more from one side of a leg to the other; twice as much is surely something else.
    private const double AsBright = 0.1;
    private const double SurelyDarker = 0.25;
    private const double Plain = 0.2;
    private const int FewestBeside = 50;
    private const int MostWide = 64;

    // Specks of a few blocks go with what is around them.
    private const int FewestOfPart = 16;
    private readonly BlockGrid _grid;
    private readonly BlockRelief _relief;
    private readonly bool[] _isMain;
    private readonly double _middle;

    public SheetParts(BlockGrid grid, BlockRelief relief, bool[] even)
    {
        (_grid, _relief) = (grid, relief);
        var parts = BlockRegions.Of(grid, even);
        var main = Main(parts);
        Textured = relief.Textured(main);
        Sheet.AddRange(main);
        _isMain = new bool[grid.Blocks.Length];
        main.ForEach(i => _isMain[i] = true);
        _middle = Middle(main);
        foreach (var part in parts.Where(part => part.Count >= FewestOfPart && !ReferenceEquals(part, main)))
        {
            Judge(part);
        }
    }

    /// <summary>Blocks of the sheet.</summary>
    public List<int> Sheet { get; } = [];

    /// <summary>Even blocks that are something else.</summary>
    public List<int> Other { get; } = [];

    /// <summary>Even blocks of which it cannot be told for sure.</summary>
    public List<int> Doubtful { get; } = [];

    /// <summary>Blocks with more detail than the sheet's noise.</summary>
    public bool[] Textured { get; }

    private List<int> Main(List<List<int>> parts)
    {
        if (parts.Count == 0)
        {
            return [];
        }

        var brightest = parts.Max(part => part.Max(i => _relief.Stops[i]));
        return parts.Where(part => part.Exists(i => _relief.Stops[i] > brightest - SeedStops))
            .MaxBy(part => (part.Count(i => BlockRegions.IsAtEdge(_grid, i)), part.Count))!;
    }

    private void Judge(List<int> part)
    {
        var darker = Beside(part) - Middle(part);
        var texture = part.Count(i => Textured[i]) / (double)part.Count;
        var isSheet = darker <= AsBright && texture < Plain;
        (isSheet ? Sheet : Other).AddRange(part);

        // A white patch inside an animal is a gap between its legs or a shining spot on its back: nobody can tell.
        var isEnclosed = !part.Exists(i => BlockRegions.IsAtEdge(_grid, i));
        if (isSheet ? isEnclosed || darker > AsBright / 2 : darker > 0 && darker < SurelyDarker && texture < 2 * Plain)
        {
            Doubtful.AddRange(part);
        }
    }

    private double Middle(List<int> part) => part.Count == 0 ? 0 : part.Select(i => _relief.Stops[i]).Order().ElementAt(part.Count / 2);

    // The sheet in a box around the part, as wide as it must be to hold some of it; all of the sheet where it is far.
    private double Beside(List<int> part)
    {
        var (left, right) = (part.Min(i => i % _grid.Columns), part.Max(i => i % _grid.Columns));
        var (top, bottom) = (part.Min(i => i / _grid.Columns), part.Max(i => i / _grid.Columns));
        for (var wider = 2 * BlockRelief.Reach; wider <= MostWide; wider *= 2)
        {
            var beside = InBox(left - wider, right + wider, top - wider, bottom + wider);
            if (beside.Count >= FewestBeside)
            {
                return Middle(beside);
            }
        }

        return _middle;
    }

    private List<int> InBox(int left, int right, int top, int bottom)
    {
        var found = new List<int>();
        for (var row = Math.Max(0, top); row <= Math.Min(_grid.Rows - 1, bottom); row++)
        {
            for (var column = Math.Max(0, left); column <= Math.Min(_grid.Columns - 1, right); column++)
            {
                var i = (row * _grid.Columns) + column;
                if (_isMain[i])
                {
                    found.Add(i);
                }
            }
        }

        return found;
    }
}
