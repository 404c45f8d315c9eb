using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Bakehouse.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class FirstBook : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "audit",
                columns: table => new
                {
                    Counter = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Command = table.Column<string>(type: "TEXT", nullable: false),
                    CommandId = table.Column<string>(type: "TEXT", nullable: false),
                    Subject = table.Column<string>(type: "TEXT", nullable: false),
                    Outcome = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_audit", x => x.Counter);
                });

            migrationBuilder.CreateTable(
                name: "done",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Format = table.Column<int>(type: "INTEGER", nullable: false),
                    Answer = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_done", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "drafts",
                columns: table => new
                {
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Written = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_drafts", x => x.Device);
                });

            migrationBuilder.CreateTable(
                name: "orders",
                columns: table => new
                {
                    Seq = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Handover = table.Column<string>(type: "TEXT", nullable: false),
                    Search = table.Column<string>(type: "TEXT", nullable: false),
                    Format = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Written = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_orders", x => x.Seq);
                });

            migrationBuilder.CreateTable(
                name: "plan_head",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Epoch = table.Column<long>(type: "INTEGER", nullable: true),
                    Week = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_plan_head", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "ring_answers",
                columns: table => new
                {
                    Seq = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Ring = table.Column<string>(type: "TEXT", nullable: false),
                    Turn = table.Column<int>(type: "INTEGER", nullable: false),
                    Order = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Until = table.Column<long>(type: "INTEGER", nullable: true),
                    Undone = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ring_answers", x => x.Seq);
                });

            migrationBuilder.CreateTable(
                name: "shops",
                columns: table => new
                {
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Format = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Written = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_shops", x => x.Version);
                });

            migrationBuilder.CreateTable(
                name: "ticks",
                columns: table => new
                {
                    Seq = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Step = table.Column<string>(type: "TEXT", nullable: false),
                    Order = table.Column<string>(type: "TEXT", nullable: false),
                    Done = table.Column<long>(type: "INTEGER", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Written = table.Column<long>(type: "INTEGER", nullable: false),
                    UndonePerson = table.Column<string>(type: "TEXT", nullable: true),
                    Undone = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ticks", x => x.Seq);
                });

            migrationBuilder.CreateTable(
                name: "wall_choices",
                columns: table => new
                {
                    Choice = table.Column<string>(type: "TEXT", nullable: false),
                    Taken = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_wall_choices", x => x.Choice);
                });

            migrationBuilder.CreateTable(
                name: "wall_cleans",
                columns: table => new
                {
                    Machine = table.Column<string>(type: "TEXT", nullable: false),
                    Start = table.Column<long>(type: "INTEGER", nullable: false),
                    People = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_wall_cleans", x => new { x.Machine, x.Start });
                });

            migrationBuilder.CreateTable(
                name: "wall_holds",
                columns: table => new
                {
                    Hold = table.Column<string>(type: "TEXT", nullable: false),
                    Store = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_wall_holds", x => x.Hold);
                });

            migrationBuilder.CreateTable(
                name: "wall_steps",
                columns: table => new
                {
                    Step = table.Column<string>(type: "TEXT", nullable: false),
                    Start = table.Column<long>(type: "INTEGER", nullable: false),
                    People = table.Column<string>(type: "TEXT", nullable: false),
                    Machine = table.Column<string>(type: "TEXT", nullable: true),
                    Batch = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_wall_steps", x => x.Step);
                });

            migrationBuilder.InsertData(
                table: "plan_head",
                columns: new[] { "Id", "Epoch", "Version", "Week" },
                values: new object[] { 1, null, 0, "" });

            migrationBuilder.CreateIndex(
                name: "IX_audit_CommandId",
                table: "audit",
                column: "CommandId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_orders_Handover",
                table: "orders",
                column: "Handover");

            migrationBuilder.CreateIndex(
                name: "IX_orders_Id_Version",
                table: "orders",
                columns: new[] { "Id", "Version" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_orders_Number_Version",
                table: "orders",
                columns: new[] { "Number", "Version" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ring_answers_Order",
                table: "ring_answers",
                column: "Order");

            migrationBuilder.CreateIndex(
                name: "IX_ring_answers_Ring_Turn",
                table: "ring_answers",
                columns: new[] { "Ring", "Turn" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ticks_Order",
                table: "ticks",
                column: "Order");

            migrationBuilder.CreateIndex(
                name: "IX_ticks_Step",
                table: "ticks",
                column: "Step",
                unique: true,
                filter: "\"Undone\" IS NULL");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "audit");

            migrationBuilder.DropTable(
                name: "done");

            migrationBuilder.DropTable(
                name: "drafts");

            migrationBuilder.DropTable(
                name: "orders");

            migrationBuilder.DropTable(
                name: "plan_head");

            migrationBuilder.DropTable(
                name: "ring_answers");

            migrationBuilder.DropTable(
                name: "shops");

            migrationBuilder.DropTable(
                name: "ticks");

            migrationBuilder.DropTable(
                name: "wall_choices");

            migrationBuilder.DropTable(
                name: "wall_cleans");

            migrationBuilder.DropTable(
                name: "wall_holds");

            migrationBuilder.DropTable(
                name: "wall_steps");
        }
    }
}
