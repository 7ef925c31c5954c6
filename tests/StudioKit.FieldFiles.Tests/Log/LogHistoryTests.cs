using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

public sealed class LogHistoryTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private readonly FieldLog _log;

    public LogHistoryTests()
    {
        _log = FieldLog.Open(_scratch.File("field.log"), new FixedTime(LogSamples.Now), () => "").Value!;
        _log.Import(LogSamples.Snapshot).Should().BeEmpty();
    }

    public void Dispose()
    {
        _log.Dispose();
        _scratch.Dispose();
    }

    [Fact]
    public void A_change_keeps_what_was_there()
    {
        _log.Save(LogSamples.Session with { Remarks = "stopped raining" });

        var change = _log.History()[^1];
        (change.At, change.Action).Should().Be((LogSamples.Now, LogAction.Edited));
        change.Records.Single().Fields.Should().Equal(new FieldChange("remarks", "light rain", "stopped raining"));
    }

    [Fact]
    public void Undo_goes_back_change_by_change_and_redo_forward()
    {
        _log.Save(LogSamples.Session with { Remarks = "one" });
        _log.Save(LogSamples.Session with { Remarks = "two" });

        _log.Undo().Value!.Target.Should().Be(3);
        Remarks.Should().Be("one");
        _log.Undo().Value!.Target.Should().Be(2);
        Remarks.Should().Be("light rain");
        _log.Redo().IsSound.Should().BeTrue();
        Remarks.Should().Be("one");
        _log.Redo().IsSound.Should().BeTrue();
        Remarks.Should().Be("two");
        _log.Redo().Diagnostics.Single().Code.Should().Be("FLD474");
    }

    [Fact]
    public void After_something_new_nothing_is_left_to_make_again()
    {
        _log.Save(LogSamples.Session with { Remarks = "one" });
        _log.Undo();
        _log.Save(LogSamples.Session with { Remarks = "other" });

        _log.Redo().IsSound.Should().BeFalse();
        Remarks.Should().Be("other");
    }

    [Fact]
    public void A_session_taken_out_goes_with_all_it_holds_and_comes_back_whole_in_its_order_under_its_short_identifiers()
    {
        _log.Save(LogSamples.Session with { Id = "session-2", Name = "later" });
        var (before, names) = (_log.Read(), _log.Index().Entries);

        _log.Delete("session-1").Value!.Should().BeEquivalentTo(LogSamples.Snapshot);
        _log.Read().Should().BeEquivalentTo(LogSnapshot.Empty with { Sessions = [LogSamples.Session with { Id = "session-2", Name = "later" }] });
        _log.Undo().IsSound.Should().BeTrue();

        _log.Read().Should().BeEquivalentTo(before, options => options.WithStrictOrdering());
        _log.Index().Entries.Should().Equal(names);
        _log.CheckIntegrity().Should().BeEmpty();
    }

    [Fact]
    public void An_import_is_taken_back_as_one_and_taken_in_twice_changes_nothing()
    {
        _log.Import(LogSamples.Snapshot).Should().BeEmpty();
        _log.History().Should().ContainSingle().Which.Action.Should().Be(LogAction.Imported);

        _log.Undo();

        _log.Read().Records.Should().BeEmpty();
    }

    [Fact]
    public void A_record_that_one_change_touches_twice_goes_back_to_what_it_was_before_both()
    {
        FieldSession[] twice = [LogSamples.Session with { Remarks = "one" }, LogSamples.Session with { Remarks = "two" }];
        _log.Save(LogSnapshot.Empty with { Sessions = twice }, LogAction.Edited).Should().BeEmpty();
        Remarks.Should().Be("two");

        _log.Undo().IsSound.Should().BeTrue();

        Remarks.Should().Be("light rain");
        _log.Redo().IsSound.Should().BeTrue();
        Remarks.Should().Be("two");
    }

    [Fact]
    public void A_frame_moved_to_another_subject_keeps_its_short_identifier_and_moves_back_with_undo()
    {
        _log.Save(LogSamples.Subject with { Id = "subject-2", ScientificName = "Pirata" });
        var shown = _log.Index().ShortId(LogSamples.Frame.Id);

        var moved = _log.Move(LogSamples.Frame.Id, LogSamples.Frame with { SubjectId = "subject-2" }).Value!;

        _log.Read().Frames.Should().Equal(moved);
        _log.Index().Frame(shown).Value.Should().Be(moved);
        _log.Undo();
        _log.Index().Frame(shown).Value.Should().Be(LogSamples.Frame);
    }

    [Fact]
    public void A_frame_moved_onto_another_of_its_name_is_refused()
    {
        _log.Save(LogSamples.Subject with { Id = "subject-2" });
        _log.Save(LogSamples.Frame with { SubjectId = "subject-2", Caption = "another" });

        _log.Move(LogSamples.Frame.Id, LogSamples.Frame with { SubjectId = "subject-2" }).Diagnostics.Single().Code.Should().Be("FLD476");

        _log.Read().Frames.Should().HaveCount(2);
    }

    [Fact]
    public void Short_identifiers_are_unique_among_many_records()
    {
        var many = Enumerable.Range(0, 1500).Select(number => LogSamples.Measurement with { Id = string.Create(CultureInfo.InvariantCulture, $"m{number}") }).ToList();
        _log.Save(LogSnapshot.Empty with { Measurements = many }, LogAction.Recorded).Should().BeEmpty();

        var shown = _log.Index().Entries.Select(entry => entry.ShortId).ToList();

        shown.Should().OnlyHaveUniqueItems().And.HaveCount(1504);
        shown.Max(text => text.Length).Should().BeLessThanOrEqualTo(5);
    }

    private string Remarks => _log.Read().Sessions.Single().Remarks;
}
