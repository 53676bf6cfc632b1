package plyworth.workbench.command.stock;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.data.JsonPrint;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.WrongInput;

/** Lists the products whose sorption is known, with what to write into a study. */
@Command(
    name = "products",
    description = "Products whose sorption is known: constants, critical point, sources.")
public final class ProductsCommand implements Callable<Integer> {

  private static final double COLDEST = -40;
  private static final double HOTTEST = 70;

  @ParentCommand private Program program;

  @Option(
      names = "--at",
      paramLabel = "CELSIUS",
      defaultValue = "25",
      description = "Temperature of the isotherms, °C; ${DEFAULT-VALUE} by default.")
  private double celsius;

  @Mixin private OutputFormat format;

  @Override
  public Integer call() {
    if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
      throw new WrongInput("--at: " + celsius + " °C; it must lie between -40 and 70 °C");
    }
    ProductLibrary library = ProductLibrary.standard();
    if (format.json()) {
      program.out().print(JsonPrint.text(ProductsJson.of(library, celsius)));
    } else {
      ProductsText.print(library, celsius, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }
}
