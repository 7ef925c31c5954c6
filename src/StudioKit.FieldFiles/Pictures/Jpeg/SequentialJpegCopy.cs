using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Copies a sequential JPEG code by code: what the bar does not touch keeps its coefficients, and memory holds the bar's blocks alone.</summary>
/// <remarks>
/// The file is gone through twice: once to learn the blocks under the bar, and once to write. First coefficients are coded as differences, so the
/// block behind a changed one has its difference coded anew. Tables made for the picture's own codes may lack those of the bar; then ones
/// are made that have them.
/// </remarks>
internal sealed class SequentialJpegCopy : IBarredCopy
{
    private readonly Func<Stream> _open;
    private readonly Func<JpegSegment, JpegSegment?> _keep;
    private readonly StoredBox _box;
    private readonly List<JpegSegment> _header = [];
    private readonly List<HuffmanTable> _known = [];
    private readonly List<bool> _isFirst = [];
    private readonly JpegBlock _block = new();
    private JpegPlaneRegion[] _regions = [];
    private List<HuffmanTable>? _made;

    private SequentialJpegCopy(Func<Stream> open, StoredBox box, Func<JpegSegment, JpegSegment?> keep) => (_open, _box, _keep) = (open, box, keep);

    public double Brightness => JpegInk.Of(_regions[0].Frame, _header).Brightness([.. _regions.Select(region => region.Mean)]);

    public IReadOnlyList<string> Changes => JpegSegment.LeftOut(_header);

    /// <summary>Goes through the picture once.</summary>
    /// <param name="open">Opens it.</param>
    /// <param name="box">Where the bar will lie.</param>
    /// <param name="keep">What becomes of a segment that tells of the picture: itself, another, or none.</param>
    /// <exception cref="InvalidDataException">The picture is damaged.</exception>
    /// <exception cref="NotSupportedException">It is of a kind that cannot be copied.</exception>
    public static SequentialJpegCopy Open(Func<Stream> open, StoredBox box, Func<JpegSegment, JpegSegment?> keep)
    {
        var copy = new SequentialJpegCopy(open, box, keep);
        copy.Run(null);
        return copy._regions.Length > 0 && Array.TrueForAll(copy._regions, region => region.IsComplete)
            ? copy
            : throw new InvalidDataException("The picture's data end too early.");
    }

    public void Write(BarStamp stamp, Stream target)
    {
        var ink = JpegInk.Of(_regions[0].Frame, _header);
        for (var plane = 0; plane < _regions.Length; plane++)
        {
            _regions[plane].Stamp(stamp, ink.White[plane], ink.Black[plane]);
        }

        _made = [.. _known.Select((table, i) => table.IsComplete(_isFirst[i]) ? table : HuffmanCode.For(Needed(table, _isFirst[i])))];
        var bits = new JpegBits(target);
        Run(bits);
        bits.Flush();
    }

    public void Dispose()
    {
        // The file is opened for each way through it and closed again.
    }

    private static long[] Needed(HuffmanTable table, bool isFirst)
    {
        var uses = table.Uses.ToArray();
        foreach (var symbol in HuffmanTable.SymbolsNeeded(isFirst))
        {
            uses[symbol]++;
        }

        return uses;
    }

    private void Run(JpegBits? target)
    {
        using var stream = _open();
        var bytes = new JpegBytes(stream);
        if (bytes.Byte() != 0xFF || bytes.Byte() != JpegSegment.StartOfImage)
        {
            throw new InvalidDataException("This is not a JPEG.");
        }

        target?.Marker(JpegSegment.StartOfImage);
        new Pass(this, bytes, target).Run();
        target?.Marker(JpegSegment.EndOfImage);
    }

    /// <summary>One way through the file: to learn, or to write.</summary>
    private sealed class Pass(SequentialJpegCopy copy, JpegBytes bytes, JpegBits? target)
    {
        private readonly HuffmanTable?[] _tables = new HuffmanTable?[8];
        private readonly HuffmanTable?[] _written = new HuffmanTable?[8];
        private readonly JpegSteps _steps = new();
        private JpegFrame? _frame;
        private int _restart;
        private int _tableCount;

        public void Run()
        {
            for (var marker = bytes.Marker(); marker != JpegSegment.EndOfImage; marker = bytes.Marker())
            {
                if (JpegSegment.StandsAlone(marker))
                {
                    continue;
                }

                var segment = new JpegSegment(marker, bytes.Segment());
                if (target is null)
                {
                    copy._header.Add(segment);
                }

                if (marker == JpegSegment.StartOfScan)
                {
                    target?.Segment(marker, segment.Data);
                    Scan(segment.Data);
                }
                else
                {
                    Segment(segment);
                }
            }
        }

        private void Segment(JpegSegment segment)
        {
            switch (segment.Marker)
            {
                case JpegSegment.HuffmanTables:
                    target?.Segment(segment.Marker, Tables(segment.Data));
                    if (target is null)
                    {
                        Tables(segment.Data);
                    }

                    return;
                case JpegSegment.QuantisationTables:
                    _steps.Read(segment.Data);
                    break;
                case JpegSegment.RestartInterval when segment.Data.Length >= 2:
                    _restart = (segment.Data[0] << 8) | segment.Data[1];
                    break;
                case JpegSegment.NumberOfLines:
                    throw new NotSupportedException("A JPEG that gives its height only at its end cannot be copied.");
                case var _ when segment.IsFrameHeader:
                    Frame(segment);
                    break;
            }

            if (copy._keep(segment) is { } kept)
            {
                target?.Segment(kept.Marker, kept.Data);
            }
        }

        private void Frame(JpegSegment segment)
        {
            if (_frame is not null)
            {
                throw new NotSupportedException("A JPEG of several frames cannot be copied.");
            }

            _frame = JpegFrame.Read(segment.Marker, segment.Data);
            if (_frame.IsProgressive)
            {
                throw new InvalidDataException("The picture's header contradicts itself.");
            }

            if (target is null)
            {
                copy._regions = [.. _frame.Components.Select(component => new JpegPlaneRegion(_frame, component, copy._box))];
            }
        }

        // The segment as it is written: with the codes that the bar needs.
        private byte[] Tables(byte[] data)
        {
            var written = new List<byte>();
            for (var at = 0; at < data.Length;)
            {
                var count = at + 17 > data.Length ? -1 : data.AsSpan(at + 1, 16).ToArray().Sum(length => length);
                var (kind, number) = (data[at] >> 4, data[at] & 15);
                if (count is < 0 or > 256 || at + 17 + count > data.Length || kind > 1 || number > 3)
                {
                    throw new InvalidDataException("A Huffman table is damaged.");
                }

                var table = new HuffmanTable(data.AsSpan(at + 1, 16), data.AsSpan(at + 17, count));
                var place = (4 * kind) + number;
                _tables[place] = table;
                _written[place] = Known(table, kind == 0);
                written.Add(data[at]);
                written.AddRange(_written[place]!.Contents);
                at += 17 + count;
            }

            return [.. written];
        }

        private HuffmanTable Known(HuffmanTable table, bool isFirst)
        {
            if (copy._made is null)
            {
                copy._known.Add(table);
                copy._isFirst.Add(isFirst);
                return table;
            }

            return copy._made[_tableCount++];
        }

        private void Scan(byte[] data)
        {
            if (_frame is not { } frame)
            {
                throw new InvalidDataException("A scan comes before the picture's header.");
            }

            var scan = JpegScan.Read(data, frame, _tables);
            var targets = target is null ? scan : JpegScan.Read(data, frame, _written);
            foreach (var (plane, _, _) in scan.Planes)
            {
                copy._regions[plane].Steps = _steps[frame.Components[plane].Table];
            }

            var (read, wrote) = (new int[4], new int[4]);
            var (group, restarts) = (0, 0);
            foreach (var blocks in scan.Groups(frame))
            {
                if (_restart > 0 && group > 0 && group % _restart == 0)
                {
                    Restart(restarts++);
                    Array.Clear(read);
                    Array.Clear(wrote);
                }

                group++;
                foreach (var (plane, column, row) in blocks)
                {
                    Block(scan, targets, plane, column, row, ref read[plane], ref wrote[plane]);
                }
            }

            target?.Align();
        }

        private void Restart(int number)
        {
            var marker = bytes.Marker();
            if (marker != JpegSegment.FirstRestart + (number % 8))
            {
                throw new InvalidDataException("A part of the picture is missing.");
            }

            target?.Align();
            target?.Marker(marker);
        }

        private void Block(JpegScan scan, JpegScan targets, int plane, int column, int row, ref int read, ref int wrote)
        {
            var (first, others) = TablesOf(scan, plane);
            var (block, region) = (copy._block, copy._regions[plane]);
            block.Read(bytes, first, others);
            read += block.Difference;
            if (target is null)
            {
                if (region.Contains(column, row))
                {
                    var coefficients = region.Take(column, row);
                    block.Unpack(coefficients);
                    coefficients[0] = (short)read;
                }

                return;
            }

            var value = read;
            if (region.IsChanged(column, row))
            {
                block.Pack(region.Block(column, row));
                value = region.Block(column, row)[0];
            }

            (first, others) = TablesOf(targets, plane);
            block.Write(target, value - wrote, first, others);
            wrote = value;
        }

        private static (HuffmanTable First, HuffmanTable Others) TablesOf(JpegScan scan, int plane)
        {
            for (var i = 0; ; i++)
            {
                if (scan.Planes[i].Plane == plane)
                {
                    return (scan.Planes[i].First, scan.Planes[i].Others);
                }
            }
        }
    }
}
