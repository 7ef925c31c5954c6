namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>One scan of a sequential JPEG: which planes, with which tables.</summary>
/// <param name="Planes">Number of each plane in the frame, and the tables for its first and other coefficients.</param>
internal sealed record JpegScan(IReadOnlyList<(int Plane, HuffmanTable First, HuffmanTable Others)> Planes)
{
    /// <summary>Reads a scan header.</summary>
    /// <exception cref="InvalidDataException">It names planes or tables that there are not.</exception>
    public static JpegScan Read(byte[] data, JpegFrame frame, HuffmanTable?[] tables)
    {
        var count = data.Length == 0 ? 0 : data[0];
        if (count is 0 or > 4 || data.Length < 4 + (2 * count))
        {
            throw Damaged();
        }

        return new JpegScan([.. Enumerable.Range(0, count).Select(i => Plane(data[1 + (2 * i)], data[2 + (2 * i)], frame, tables))]);
    }

    /// <summary>All blocks of the scan in their order, a group at a time.</summary>
    public IEnumerable<IReadOnlyList<(int Plane, int Column, int Row)>> Groups(JpegFrame frame)
    {
        var (wide, high) = Planes.Count > 1
            ? (frame.GroupsWide, frame.GroupsHigh)
            : (frame.BlocksWide(frame.Components[Planes[0].Plane]), frame.BlocksHigh(frame.Components[Planes[0].Plane]));
        var shape = Shape(frame);
        var group = new (int Plane, int Column, int Row)[shape.Count];
        for (var y = 0; y < high; y++)
        {
            for (var x = 0; x < wide; x++)
            {
                for (var i = 0; i < group.Length; i++)
                {
                    var (plane, across, down, column, row) = shape[i];
                    group[i] = (plane, (x * across) + column, (y * down) + row);
                }

                yield return group;
            }
        }
    }

    // A plane alone comes block by block; together with others, each gives as many blocks as it has samples across and down.
    private List<(int Plane, int Across, int Down, int Column, int Row)> Shape(JpegFrame frame) => Planes.Count == 1
        ? [(Planes[0].Plane, 1, 1, 0, 0)]
        : [.. from plane in Planes
              let component = frame.Components[plane.Plane]
              from row in Enumerable.Range(0, component.Down)
              from column in Enumerable.Range(0, component.Across)
              select (plane.Plane, component.Across, component.Down, column, row)];

    private static (int Plane, HuffmanTable First, HuffmanTable Others) Plane(byte id, byte numbers, JpegFrame frame, HuffmanTable?[] tables)
    {
        var plane = frame.Components.ToList().FindIndex(component => component.Id == id);
        return plane >= 0 && numbers >> 4 < 4 && (numbers & 15) < 4 && tables[numbers >> 4] is { } first && tables[4 + (numbers & 15)] is { } others
            ? (plane, first, others)
            : throw Damaged();
    }

    private static InvalidDataException Damaged() => new("A scan of the picture is damaged.");
}
