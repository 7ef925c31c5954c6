using StudioKit.Field.Log;
using StudioKit.Field.Log.Rows;
using StudioKit.Planning.Session;

namespace StudioKit.Field.Tests.Log.Rows;

/// <summary>The rows are those that a person writes on the printed sheet; what they mean is said in the help of the command.</summary>
public sealed class RowReaderTests
{
    private const string Rows =
        """
        date,place,time,animal,scientific,doubt,framing,set-up,frames,held,released,size,remarks
        2026-05-09,Wisplow Fen,14:05,raft spider,Dolomedes,cf.,A,B,0412-0414,14:02,14:16,18.5,on a leaf
        ,,14:11,,,,C,,0420-0421; 0426,,,,
        ,,14:40,sundew,,,A,-,moss.jpg,,,,
        """;

    private static readonly LetterKeys Keys = new([new("A", "reed 55 at 1:4"), new("B", "reed 55 at 1:2"), new("C", "reed 55 at 1:1")], [new("A", "white"), new("B", "dusk")]);

    private static readonly Func<DateTime, TimeSpan> Zone = _ => TimeSpan.FromHours(1);

    [Fact]
    public void A_row_is_an_animal_with_its_pictures_and_an_empty_name_goes_on_with_the_one_above()
    {
        var read = Read(Rows).Value!;

        read.Sessions.Single().Should().BeEquivalentTo(new { Locality = "Wisplow Fen", Start = FieldDate.OfDay(new DateOnly(2026, 5, 9)) });
        read.Subjects.Select(subject => subject.VernacularName).Should().Equal("raft spider", "sundew");
        read.Frames.Select(frame => frame.FileName).Should().Equal("0412.jpg", "0413.jpg", "0414.jpg", "0420.jpg", "0421.jpg", "0426.jpg", "moss.jpg");
        read.Frames.Count(frame => frame.SubjectId == read.Subjects[0].Id).Should().Be(6);
        read.Measurements.Single().Should().BeEquivalentTo(new { Type = "body length", Value = "18.5", Unit = "mm" });
    }

    [Fact]
    public void Letters_stand_for_the_kits_names_and_a_set_up_holds_until_it_is_taken_back()
    {
        var frames = Read(Rows).Value!.Frames;

        frames.Select(frame => frame.Framing).Distinct().Should().Equal("reed 55 at 1:4", "reed 55 at 1:1");
        frames.Select(frame => frame.SetUp).Should().Equal("dusk", "dusk", "dusk", "dusk", "dusk", "dusk", "");
    }

    [Fact]
    public void Times_are_on_the_clock_of_the_place_and_a_release_later_on_belongs_to_the_animal_above()
    {
        var subject = Read("time,animal,frames,held,released\n14:05,moth,1,14:02,\n14:20,,2,,kept 14:30\n", Session).Value!.Subjects.Single();

        subject.HoldStart.Should().Be(new DateTimeOffset(2026, 5, 9, 14, 2, 0, TimeSpan.FromHours(1)));
        subject.HoldEnd.Should().Be(new DateTimeOffset(2026, 5, 9, 14, 30, 0, TimeSpan.FromHours(1)));
        subject.Released.Should().BeFalse();
    }

    [Fact]
    public void A_night_goes_on_past_midnight_and_a_time_just_before_it_is_still_of_the_day_before()
    {
        var read = Read("time,animal,frames,held\n23:50,moth,1,\n00:10,moth,2,23:55\n00:20,moth,3,\n", Session).Value!;

        read.Frames.Select(frame => frame.Taken!.Value.Moment!.Value.Day).Should().Equal(9, 10, 10);
        read.Subjects[1].HoldStart!.Value.Day.Should().Be(9);
    }

    [Fact]
    public void Rows_without_a_head_are_the_boxes_of_the_printed_sheet() =>
        Read("14:05,raft spider,2,B,A,0412,14:02,14:16,18.5,x,on a leaf\n", Session).Value!.Subjects.Single()
            .Should().BeEquivalentTo(new { VernacularName = "raft spider", IndividualCount = 2, Remarks = "on a leaf", Sensitivity = PlaceSensitivity.Withheld });

    [Fact]
    public void A_row_with_a_time_but_no_picture_keeps_when_the_animal_was_seen() =>
        Read("time,animal\n14:05,?\n", Session).Value!.Measurements.Single()
            .Should().BeEquivalentTo(new { Type = "time seen", Value = "2026-05-09T14:05:00+01:00" });

    [Fact]
    public void A_row_finds_the_session_of_its_day_and_place_in_the_log()
    {
        var read = Read("date,place,animal\n2026-05-09,wisplow fen,moth\n2026-05-09,elsewhere,moth\n", null, new LogSnapshot([Session], [], [], [])).Value!;

        read.Subjects[0].SessionId.Should().Be("session-1");
        read.Sessions.Single().Locality.Should().Be("elsewhere");
    }

    [Theory]
    [InlineData("date,animal\n9 May,moth\n", "rows.csv(2,1)", "'9 May' is no day")]
    [InlineData("animal\nmoth\n", "rows.csv(2,1)", "no date is given")]
    [InlineData("date,animl,frames\n2026-05-09,moth,1\n", "rows.csv(1,6)", "no column 'animl'")]
    [InlineData("date,animal,date\n2026-05-09,moth,\n", "rows.csv(1,13)", "there twice")]
    [InlineData("date,animal,time\n2026-05-09,moth,2 pm\n", "rows.csv(2,17)", "'2 pm' is no time")]
    [InlineData("date,animal,frames\n2026-05-09,moth,19-12\n", "rows.csv(2,17)", "runs from 19 to 12")]
    [InlineData("date,animal,frames\n2026-05-09,moth,1-99999\n", "rows.csv(2,17)", "runs from 1 to 99999")]
    [InlineData("date,animal,framing,frames\n2026-05-09,moth,D,1\n", "rows.csv(2,17)", "A = reed 55 at 1:4")]
    [InlineData("date,animal,count\n2026-05-09,moth,two\n", "rows.csv(2,17)", "'two' is no count")]
    [InlineData("date,animal,size\n2026-05-09,moth,big\n", "rows.csv(2,17)", "1.8 cm")]
    [InlineData("date,animal,limit\n2026-05-09,moth,10\n", "rows.csv(2,17)", "10 min")]
    [InlineData("date,animal,sensitive\n2026-05-09,moth,99\n", "rows.csv(2,17)", "withheld")]
    [InlineData("date,animal,frames\n2026-05-09,,1\n", "rows.csv(2,12)", "names no animal")]
    [InlineData("date,animal,released\n2026-05-09,moth,14:10\n", "rows.csv(2,17)", "nothing says since when")]
    [InlineData("date,animal,frames\n2026-05-09,moth,1; 1\n", "rows.csv(2,17)", "1 of 2 are recorded already")]
    [InlineData("date,scientific,frames\n2026-05-09,Dolomedes cf. plantarius,1\n", "rows.csv(2)", "FLD411")]
    [InlineData("date,animal,frames\n2027-05-09,moth,1\n", "rows.csv(2)", "future")]
    [InlineData("date,animal,frames\n2026-05-09,moth,1,,on a leaf, in rain\n", "rows.csv(2,1)", "6 cells for 3 columns")]
    public void A_fault_is_told_by_row_and_column_and_nothing_is_read(string rows, string place, string said)
    {
        var result = Read(rows);

        result.IsSound.Should().BeFalse();
        result.Diagnostics.Select(fault => fault.ToString()).Should().Contain(fault => fault.StartsWith(place, StringComparison.Ordinal) && fault.Contains(said));
    }

    [Fact]
    public void All_faults_of_a_table_are_told_at_once() =>
        Read("date,animal,time,count\n2026-05-09,moth,noon,two\n,beetle,25:00,\n").Diagnostics.Should().HaveCount(3);

    [Fact]
    public void Rows_written_of_a_log_enter_again_unchanged() =>
        AnyLog.Sample(
            log =>
            {
                var written = Write(log);
                var again = RowReader.Read("rows.csv", written, Context(LogSnapshot.Empty, null) with { Keys = null });
                again.Diagnostics.Should().BeEmpty();
                Write(again.Value!).Should().Be(written);
            },
            iter: RandomFiles.Count);

    [Fact]
    public void Any_text_gives_records_or_faults_but_never_a_trace() =>
        Gen.Select(Gen.Int[0, Rows.Length - 1], Gen.Int[0, 30], Gen.Char["abA1:;,.\"'\n -?=x\0é"].Array[0, 20]).Array[1, 4].Sample(
            changes =>
            {
                var text = changes.Aggregate(Rows, (rows, change) =>
                {
                    var at = change.Item1 % (rows.Length + 1);
                    return rows.Remove(at, Math.Min(change.Item2, rows.Length - at)).Insert(at, new string(change.Item3));
                });
                var result = Read(text);
                return result.IsSound || result.Diagnostics.Count > 0;
            },
            iter: 5 * RandomFiles.Count);

    [Fact]
    public void A_cell_that_a_spreadsheet_takes_for_a_formula_is_guarded_and_comes_back()
    {
        var log = new LogSnapshot([Session], [LogSamples.Subject with { Remarks = "=1+2" }], [], []);

        var written = Write(log);

        written.Should().Contain(",'=1+2");
        RowReader.Read("rows.csv", written, Context(LogSnapshot.Empty, null)).Value!.Subjects.Single().Remarks.Should().Be("=1+2");
    }

    private static readonly FieldSession Session = LogSamples.Session with { Locality = "Wisplow Fen", End = null };

    private static readonly Gen<string> AnyText = Gen.Char["abc ,\"\n\t;|'=-+@?é蛾9"].Array[0, 8].Select(characters => new string(characters).Trim());

    private static readonly Gen<LogSnapshot> AnyLog =
        from texts in AnyText.Array[40]
        from minutes in Gen.Int[0, 4000].Array[40]
        from flags in Gen.Int[0, 31].Array[12]
        select Compose(texts, minutes, flags);

    private static LogSnapshot Compose(string[] texts, int[] minutes, int[] flags)
    {
        var start = new DateTimeOffset(2026, 5, 5, 20, 0, 0, TimeSpan.FromHours(1));
        var sessions = Enumerable.Range(0, 2).Select(i => Session with { Id = $"s{i}", Locality = texts[i] + i, Start = start.AddDays(i) }).ToList();
        var subjects = Enumerable.Range(0, 4).Select(i => LogSamples.Subject with
        {
            Id = $"o{i}",
            SessionId = sessions[i / 2].Id,
            VernacularName = texts[2 + i],
            ScientificName = i == 0 ? "" : "Dolomedes",
            IdentificationQualifier = texts[6 + i],
            Sex = texts[10 + i],
            LifeStage = texts[14 + i],
            IndividualCount = flags[i] % 2 == 0 ? null : flags[i],
            HoldStart = flags[i] % 3 == 0 ? null : start.AddMinutes(minutes[i]),
            HoldEnd = flags[i] % 3 != 1 ? null : start.AddMinutes(minutes[i]).AddSeconds(flags[i]),
            Released = flags[i] % 3 != 1 ? null : flags[i] % 2 == 0,
            HoldLimit = flags[i] % 4 == 0 ? null : TimeSpan.FromSeconds(30 * flags[i]),
            Sensitivity = (PlaceSensitivity)(flags[i] % 4),
            Remarks = texts[18 + i],
        }).ToList();
        var frames = Enumerable.Range(0, 8).Select(i => LogSamples.Frame with
        {
            SubjectId = $"o{i % 4}",
            FileName = flags[4 + (i / 2)] % 2 == 0 ? $"{100 + i:0000}.jpg" : $"a{i} {texts[22 + i].Replace(";", "", StringComparison.Ordinal)}x.png",
            Taken = i % 3 == 0 ? null : (FieldDate)start.AddMinutes(minutes[10 + i]).AddSeconds(i % 2 == 0 ? 0 : 7).ToOffset(TimeSpan.FromHours(i == 4 ? 3 : 1)),
            Framing = i % 2 == 0 ? "" : texts[30 + i] + "frame",
            SetUp = i % 4 == 0 ? "" : "white",
        });
        return new LogSnapshot(sessions, subjects, [.. frames], [LogSamples.Measurement with { SubjectId = "o1" }, LogSamples.Measurement with { SubjectId = "o2", Id = "m2", Type = "time seen", Value = "2026-05-06T23:10:00+01:00", Unit = "" }]);
    }

    private static string Write(LogSnapshot log)
    {
        var written = RowWriter.Write(log, Zone, FrameNumbers.Usual);
        written.Diagnostics.Should().BeEmpty();
        return written.Value!;
    }

    private static FieldResult<LogSnapshot> Read(string rows, FieldSession? session = null, LogSnapshot? log = null) =>
        RowReader.Read("rows.csv", rows, Context(log ?? LogSnapshot.Empty, session));

    private static RowContext Context(LogSnapshot log, FieldSession? session)
    {
        var ids = 0;
        return new RowContext { Log = log, Session = session, Keys = Keys, Zone = Zone, Now = new DateTimeOffset(2026, 6, 1, 0, 0, 0, TimeSpan.Zero), NewId = () => $"id-{ids++}" };
    }
}
